using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// The known lengths of one picture, in fold order, whatever name of the picture they used. <paramref name="From"/> is the hash of the
/// picture they were noted in where this one was made of it; empty where they are its own.
/// </summary>
public sealed record PictureScale(ValueList<Sighting<ScaleSighting>> References, string From = "")
{
    /// <summary>What one picture calls another that all its known lengths were carried over from; empty where they were not, or from several.</summary>
    public string CarriedFrom => References.Select(reference => reference.Value.CarriedFrom).Distinct(StringComparer.Ordinal).ToList() is [{ Length: > 0 } one] ? one : "";

    /// <summary>True when a length of it is the recognised package of a spot.</summary>
    public bool IsPackageOf(string spot) => References.Any(reference => reference.Value.Package == spot);

    /// <summary>Measuring by these lengths: the camera's distance is the one noted last.</summary>
    /// <param name="picture">The picture's name for people.</param>
    /// <param name="camera">What another picture of the same camera and zoom tells; null where none does.</param>
    public MeasureJob Job(string picture, KnownCamera? camera = null) => new()
    {
        Image = picture,
        References = [.. References.SelectMany((reference, i) => reference.Value.Reference.Parts(i))],
        Targets = [],
        Camera = camera,
        CameraDistanceMm = References.Select(reference => reference.Value.CameraDistanceMm).LastOrDefault(distance => distance is not null),
    };
}
