namespace Lidoff.Evidence.Registering;

/// <summary>What a file was recognised as.</summary>
/// <param name="Name">The recogniser's name, "unrecognised" when there was none.</param>
/// <param name="MediaType">Media type to serve it under.</param>
/// <param name="Says">The kind in words.</param>
/// <param name="IsPicture">True for pictures this program may try to open.</param>
public sealed record RecognisedFile(string Name, string MediaType, string Says, bool IsPicture)
{
    /// <summary>Kept and shown as such; nothing is thrown away for being unknown.</summary>
    public static RecognisedFile Unrecognised { get; } = new("unrecognised", "application/octet-stream", "an unrecognised file", false);
}
