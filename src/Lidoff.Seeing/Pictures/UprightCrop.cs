using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>A rectangle of a picture at any turn, cut out so that it stands upright; what lies beyond the picture is grey.</summary>
public static class UprightCrop
{
    /// <summary>A JPEG of the region without any metadata, at most so many px along its longer side, never enlarged.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it.</param>
    /// <param name="header">Its header.</param>
    /// <param name="region">What to cut out, px of the upright picture; it must overlap the picture.</param>
    /// <param name="longestSide">Most px.</param>
    public static Outcome<byte[]> Jpeg(string path, string name, PictureHeader header, PictureRegion region, int longestSide)
    {
        Guard.NotNull(header);
        Guard.That(longestSide > 0, "a side above zero");
        var corners = region.Corners;
        var (left, top) = (Math.Max(0, (int)Math.Floor(corners.Min(c => c.X)) - 2), Math.Max(0, (int)Math.Floor(corners.Min(c => c.Y)) - 2));
        var (right, foot) = (Math.Min(header.Width, (int)Math.Ceiling(corners.Max(c => c.X)) + 2), Math.Min(header.Height, (int)Math.Ceiling(corners.Max(c => c.Y)) + 2));
        if (right <= left || foot <= top) return new Fault(name, "a part of the picture", PictureSentences.CropOutside(name));
        var scale = Math.Min(1, longestSide / Math.Max(region.Width, region.Height));
        var (width, height) = (Math.Max(1, (int)Math.Round(region.Width * scale)), Math.Max(1, (int)Math.Round(region.Height * scale)));
        return PictureFile.Whole<byte[]>(name, header, () =>
        {
            using var stored = PictureFile.Stored(path, header);
            var (x, y, w, h) = PictureTurn.Stored(header.Orientation, stored.Width, stored.Height, left, top, right - left, foot - top);
            using var cut = stored.Crop(x, y, w, h);
            // Shrunk by averaging first, so that turning samples no grain.
            var shrink = Math.Max(1, (int)Math.Floor(1 / scale));
            using var less = shrink == 1 ? cut.Copy() : cut.Shrink(shrink, shrink);
            using var small = PictureFile.SmallUpright(less, header);
            var ((ax, ay), k) = (region.Along, scale * shrink);
            using var bilinear = Interpolate.NewFromName("bilinear");
            using var turned = small.Affine(
                [k * ax, k * ay, -k * ay, k * ax], bilinear, [0, 0, width, height],
                odx: width / 2.0, ody: height / 2.0, idx: (left - region.Middle.X) / shrink, idy: (top - region.Middle.Y) / shrink, background: [.. Enumerable.Repeat(128.0, small.Bands)]);
            return turned.JpegsaveBuffer(q: 90, keep: Enums.ForeignKeep.None);
        });
    }
}
