using Lidoff.Evidence.Entries;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Becauses;

namespace Lidoff.Telling.Sections;

/// <summary>Names entries in a sentence by what they say, each leading to its own line.</summary>
internal sealed class EntryLinks(ReportContext context)
{
    // A long one is cut: its own line has it whole.
    private const int Longest = 60;

    private readonly EntryPayloads payloads = new(context.View);

    /// <summary>The entries in running text: "a, b and c".</summary>
    public IEnumerable<Inline> To(IReadOnlyList<EntryId> ids)
    {
        for (var i = 0; i < ids.Count; i++)
        {
            context.Cite(ids[i]);
            if (i > 0) yield return new TextRun(i == ids.Count - 1 ? " and " : "; ");
            yield return new LinkRun(Name(ids[i]), ReportContext.Anchor(ids[i]), LinkKind.Anchor);
        }
    }

    private string Name(EntryId id)
    {
        var says = EntryWords.Say(payloads.Of(id), context.Model).TrimEnd('.');
        // Claims are told apart by whoever reads them, which is further to the right.
        if (says + "." == EntryWords.AsWritten) says = "entry " + id.Hex[..12];
        return says.Length > Longest ? says[..Longest].TrimEnd() + "…" : says;
    }
}
