using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Looks at a picture once for what measuring can learn from it.</summary>
public static class PictureLook
{
    // Edges are found to a tenth of a pixel at this size; more costs time and tells no more.
    private const int LongestSide = 1600;

    private const double LeastLength = 18;

    /// <summary>What the straight edges say of the camera; null where they are not those of a board. A picture that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<PictureSlant?> Slant(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        try
        {
            var grey = GreyPicture.Read(path, header, LongestSide);
            return BoardLines.Read(EdgeSegments.Find(grey, LeastLength), grey.Width, grey.Height);
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Kind.Says));
        }
    }
}
