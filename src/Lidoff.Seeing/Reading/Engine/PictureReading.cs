using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>Reads marks out of picture files: a whole picture, a region of it, or the body around a click. The networks must be there.</summary>
public sealed class PictureReading(IReadingNetworks networks)
{
    private readonly MarkReader reader = new(networks);

    /// <summary>Scans a region of a picture file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it.</param>
    /// <param name="header">Its header.</param>
    /// <param name="region">Where to look, px of the upright picture; null for all of it.</param>
    /// <param name="upright">True: no turn is looked for.</param>
    public Outcome<ScannedMark> Scan(string path, string name, PictureHeader header, PictureRegion? region = null, bool upright = false)
    {
        Guard.NotNull(header);
        if (networks.Troubles.Count > 0) return Outcome<ScannedMark>.Failed(networks.Troubles);
        var where = region ?? PictureRegion.Box(0, 0, header.Width, header.Height);
        return Fits(name, header, where) is { } fault ? fault : GreyPyramidFile.Read(path, name, header, where).Then(grey => reader.Scan(grey, where, upright));
    }

    /// <summary>The same, weighed.</summary>
    public Outcome<ReadMark> Read(string path, string name, PictureHeader header, PictureRegion? region = null, bool upright = false) =>
        Scan(path, name, header, region, upright).Then(scanned => reader.Weigh(scanned, upright));

    /// <summary>The body around a place of a picture, grown by a little; null where none is found.</summary>
    public Outcome<PictureRegion?> Body(string path, string name, PictureHeader header, PicturePoint place)
    {
        Guard.NotNull(header);
        if (networks.Troubles.Count > 0) return Outcome<PictureRegion?>.Failed(networks.Troubles);
        return GreyPyramidFile.Read(path, name, header, PictureRegion.Box(0, 0, header.Width, header.Height)).Then(grey => reader.Body(grey, place));
    }

    /// <summary>Why nothing can be read in a region of a picture: it lies outside, or is too small; null where it can.</summary>
    internal static Fault? Fits(string name, PictureHeader header, PictureRegion region)
    {
        var corners = region.Corners;
        var outside = corners.Max(c => c.X) <= 0 || corners.Min(c => c.X) >= header.Width || corners.Max(c => c.Y) <= 0 || corners.Min(c => c.Y) >= header.Height;
        if (outside) return ReadingSentences.BoxOutside(name, header.Width, header.Height);
        return Math.Max(region.Width, region.Height) < MarkReader.LeastSide ? ReadingSentences.TooSmall(name, region.Width, region.Height, MarkReader.LeastSide) : null;
    }
}
