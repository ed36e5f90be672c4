using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Words;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>What measuring learns from a picture itself, besides the clicked places.</summary>
/// <param name="Slant">What the straight edges say of the camera; null where they are not those of a board.</param>
/// <param name="WordsMirrored">True when the words in it read mirrored.</param>
public sealed record PictureLook(PictureSlant? Slant, bool WordsMirrored)
{
    // Edges are found to a tenth of a pixel and letters read at this size; more costs time and tells little more.
    private const int LongestSide = 2000;

    private const double LeastLength = 18;

    // Words read mirrored when that makes them likelier letters by this much, in all and for each of them. On photographs of boards,
    // straight ones gave −0.2 to −2.5 in all, their mirror images 1.0 to 2.4.
    private const double LeastGain = 0.6;
    private const double LeastGainEach = 0.03;
    private const int LeastLetters = 8;

    /// <summary>Looks at a picture once. One that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<PictureLook> At(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        return PictureFile.Whole<PictureLook>(name, header, () => Of(GreyPicture.Read(path, header, LongestSide)));
    }

    /// <summary>The same without the pixels, to be kept: clicks then carry their own doubt alone.</summary>
    public PictureLook Kept() => this with { Grey = null };

    /// <summary>The picture that was looked at.</summary>
    internal GreyPicture? Grey { get; init; }

    /// <summary>Standard uncertainty of both ends of a length, px: the click's, and what the edges they were clicked on are wider than sharp ones.</summary>
    internal double Click(PicturePoint from, PicturePoint to, double clickPx)
    {
        if (Grey is null) return clickPx;
        var (a, b) = (EdgeWidth.Doubt(Grey, from, to, clickPx), EdgeWidth.Doubt(Grey, to, from, clickPx));
        return Math.Sqrt((clickPx * clickPx) + (((a * a) + (b * b)) / 2));
    }

    /// <summary>Looks at a picture that is in memory.</summary>
    internal static PictureLook Of(GreyPicture grey)
    {
        var slant = BoardLines.Read(CaptionStrips.Without(EdgeSegments.Find(grey, LeastLength), grey), grey.Width, grey.Height);
        var (gain, letters) = MirroredWords.Weigh(grey, slant?.Turn ?? 0);
        return new(slant, letters >= LeastLetters && gain > LeastGain && gain > LeastGainEach * letters) { Grey = grey };
    }
}
