using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>Rulers of a whole picture, each with its reading.</summary>
internal static class RulerProposals
{
    /// <summary>The rulers, those with the most lines first.</summary>
    public static ValueList<RulerProposal> Of(GreyPicture grey) =>
        [.. RulerFinder.Find(grey).Select(Of)];

    /// <summary>One of them with its reading.</summary>
    public static RulerProposal Of(FoundRuler found) => new(found.First, found.Last, found.Gaps, found.EndPx, RulerReferences.ByLongLines(found)) { Middle = found.Middle };
}
