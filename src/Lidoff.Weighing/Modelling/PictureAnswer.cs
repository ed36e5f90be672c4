using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>Which stored file a picture reference means: its name, hash and entry; or the sentence that says why none.</summary>
public sealed record PictureAnswer(string Name, string Sha256, EntryId Added, string? Missing)
{
    /// <summary>True when a file was found.</summary>
    public bool Found => Missing is null;
}
