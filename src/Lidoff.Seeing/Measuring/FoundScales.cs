using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>What was found in a picture that can give its scale.</summary>
/// <param name="Target">A checkerboard or dot grid, or why there is none that can serve.</param>
/// <param name="Rulers">Rulers, those with the most lines first.</param>
public sealed record FoundScales(Outcome<FoundTarget> Target, ValueList<RulerProposal> Rulers)
{
    // As TargetSearch; a ruler's lines three pixels apart are still told at this size.
    private const int LongestSide = 2200;

    /// <summary>Looks for both, the picture read once. One that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<FoundScales> At(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        return PictureFile.Whole<FoundScales>(name, header, () =>
        {
            var grey = GreyPicture.Read(path, header, LongestSide);
            return new FoundScales(TargetSearch.Find(grey, new(header.Width, header.Height)), RulerProposals.Of(grey));
        });
    }
}
