using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>What the report says: every claim with its grade, its values leading to what they rest on, and its state.</summary>
public sealed class ClaimsSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "claims";

    /// <inheritdoc/>
    public int Place => 10;

    /// <inheritdoc/>
    public bool Graded => true;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        if (context.Claims.Count == 0) return null;
        return new("what-it-says", "What this report says", [new Listing([.. context.Claims.Select(claim => Item(claim, context))])]);
    }

    private static List<Inline> Item(Claim claim, ReportContext context)
    {
        context.Cite(claim.Written);
        List<Inline> inlines = [.. claim.Pieces.Select(piece => piece.IsReference ? context.Value(piece.Text) : new TextRun(piece.Text))];
        if (claim.State != ClaimState.Same) inlines.Add(new TextRun($" [{Says(claim.State)}{Told(claim)}]"));
        if (claim.SupportErased) inlines.Add(new TextRun(" [support erased: an entry it rested on was removed by right]"));
        inlines.Add(new TextRun(" "));
        inlines.Add(new LinkRun(claim.Name, ReportContext.Anchor(claim.Written), LinkKind.Anchor));
        inlines.Add(new TextRun($", grade {claim.Grade}"));
        return inlines;
    }

    /// <summary>What readers were told in place of what stands there now, each value once.</summary>
    private static string Told(Claim claim)
    {
        var told = PublishedText.Moved(claim).Select(each => $"{each.Told}, now {(each.Now.Lost ? "unknown" : each.Now.Printed)}").Distinct(StringComparer.Ordinal).ToList();
        return told.Count == 0 ? "" : "; published as " + string.Join("; ", told);
    }

    private static string Says(ClaimState state) => state switch
    {
        ClaimState.Moved => "moved since it was published, within its interval",
        ClaimState.Outside => "no longer what was published: it left its interval",
        ClaimState.Flipped => "no longer what was published: the verdict changed",
        ClaimState.Lost => "unsupported: something it leans on is gone or was never measured",
        _ => "changed because the program changed",
    };
}
