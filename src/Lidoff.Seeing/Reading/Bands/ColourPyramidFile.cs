using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>Reads the colours of a part of a picture file, upright, under the picture library's caps.</summary>
public static class ColourPyramidFile
{
    /// <summary>The part of a picture around a region; a large one shrunk by averaging.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it.</param>
    /// <param name="header">Its header.</param>
    /// <param name="region">What is looked at, px of the upright picture.</param>
    public static Outcome<ColourPyramid> Read(string path, string name, PictureHeader header, PictureRegion region) =>
        GreyPyramidFile.Cut(path, name, header, region, GreyPyramidFile.LongSide, (bytes, bands, width, height, left, top, step) => new ColourPyramid(bytes, bands, width, height, left, top, step));
}
