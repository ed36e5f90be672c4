using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>Looks for rulers in a whole picture, and proposes each with its reading.</summary>
public static class RulerProposals
{
    // Lines three pixels apart are still told at this size: a ruler of 300 mm fills a picture so.
    private const int LongestSide = 2000;

    /// <summary>The rulers, those with the most lines first; a picture that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<ValueList<RulerProposal>> At(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        try
        {
            return Of(GreyPicture.Read(path, header, LongestSide));
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Kind.Says));
        }
    }

    /// <summary>The same in a picture that is in memory.</summary>
    internal static ValueList<RulerProposal> Of(GreyPicture grey) =>
        [.. RulerFinder.Find(grey).Select(found => new RulerProposal(found.First, found.Last, found.Gaps, found.EndPx, RulerReferences.ByLongLines(found)))];
}
