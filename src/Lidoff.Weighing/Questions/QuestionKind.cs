using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Weighing.Questions;

/// <summary>A question stands on the board, or is taken off it.</summary>
public sealed class QuestionKind : EvidenceKind<QuestionAsked>
{
    private const int MostTies = 20;

    /// <inheritdoc/>
    public override string Name => "question";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "A question the dossier must answer, with what it is tied to; the newest entry of a name counts.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("question", "text", true, "its name, such as Q1"),
        new("text", "text", false, "the question in words; must be there unless it is dropped"),
        new("ties", "list of texts", false, "what answers it: reckoning:R1, part:U3, length:U1:long side, claim:C1 …"),
        new("why", "text", false, "why it is asked"),
        new("from", "text", false, "who asks, such as reader"),
        new("order", "number", false, "its place on the board, small ones first"),
        new("dropped", "flag", false, "true when it is not asked any more"),
        new("answer", "text", false, "an answer in a person's own words, for what no reference answers"),
    ];

    /// <inheritdoc/>
    public override Outcome<QuestionAsked> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var question = reader.Text("question", 40).Trim();
        var dropped = reader.OptionalFlag("dropped") ?? false;
        var text = dropped ? reader.OptionalText("text", 1_000) ?? "" : reader.Text("text", 1_000);
        var ties = reader.Texts("ties", most: MostTies, longest: 200).Select(Bare).ToList();
        var why = reader.OptionalText("why", 2_000) ?? "";
        var from = reader.OptionalText("from", 100) ?? "";
        var order = reader.OptionalNumber("order");
        var answer = reader.OptionalText("answer", 2_000) ?? "";
        if (ties.Any(tie => tie.Length == 0)) reader.Fail("ties", "a list of references such as part:U3");
        else if (ties.Distinct(StringComparer.Ordinal).Count() != ties.Count) reader.Fail("ties", "a list in which every reference stands once");
        return reader.Done(() => new QuestionAsked(question, text, ties.ToValueList(), why, from, order, dropped, answer));
    }

    // Claims write references in braces; whoever copies one from there means the same.
    private static string Bare(string tie)
    {
        var bare = tie.Trim();
        return bare.StartsWith('{') && bare.EndsWith('}') ? bare[1..^1].Trim() : bare;
    }
}
