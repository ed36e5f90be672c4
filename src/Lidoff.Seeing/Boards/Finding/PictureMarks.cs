using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>What a machine found in a picture that may be found again in another one of the same board.</summary>
/// <param name="Frame">Size of the upright picture.</param>
/// <param name="Marks">Round things, those that stand out most first.</param>
public sealed record PictureMarks(PictureFrame Frame, ValueList<FoundMark> Marks)
{
    /// <summary>More round things than this are not looked at: those that stand out least are left out.</summary>
    public const int Most = 240;

    private ValueList<FoundMark>? all;

    // Middles are found to a tenth of a pixel of this size, which is 2 µm on a board 40 mm wide.
    private const int LongestSide = 2200;

    /// <summary>Looks for them. A picture that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<PictureMarks> Find(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        return PictureFile.Whole<PictureMarks>(name, header, () => Of(GreyPicture.Read(path, header, LongestSide), new(header.Width, header.Height)));
    }

    /// <summary>A small copy to tell two sides from one by; null where there is none.</summary>
    internal SmoothLevel? Sketch { get; init; }

    /// <summary>The same with letters among them, which pictures of one side share as well.</summary>
    internal PictureMarks WithLetters => this with { Marks = all ?? Marks };

    internal static PictureMarks Of(GreyPicture grey, PictureFrame frame)
    {
        var found = RoundMerge.Of(RoundSearch.Find(grey));
        return new(frame, [.. LetterRows.Without(grey, found).Take(Most)]) { Sketch = Likeness.Sketch(grey), all = [.. found.Take(Most)] };
    }
}
