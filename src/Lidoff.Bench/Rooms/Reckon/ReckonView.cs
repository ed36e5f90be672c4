using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>What the room Reckon shows: bound numbers, then what was measured, each with its doubt.</summary>
/// <param name="Numbers">In natural order.</param>
/// <param name="Lengths">And whatever else was measured in pictures, in natural order.</param>
/// <param name="References">What inputs may be bound to.</param>
/// <param name="Free">The first designator that neither a number nor a spot bears.</param>
/// <param name="Questions">The questions on the board, which a number may answer.</param>
public sealed record ReckonView(ValueList<NumberRow> Numbers, ValueList<NumberRow> Lengths, ValueList<NumberReference> References, string Free, ValueList<QuestionAsked> Questions)
{
    // Of the doubt of a number, less than this is not worth a line.
    private const double Notable = 0.01;

    /// <summary>The room as the dossier stands.</summary>
    public static ReckonView Of(OpenDossier dossier)
    {
        var names = ReckoningNames.Of(dossier.Session.View);
        return new([.. names.Select(name => Number(dossier, name))], [.. Measured(dossier)], [.. NumberReferences.Of(dossier.Session.View)], FreeName.Of("R", names.Concat(Spots(dossier))), Asked(dossier));
    }

    /// <summary>The questions on the board.</summary>
    public static ValueList<QuestionAsked> Asked(OpenDossier dossier) =>
        [.. dossier.Session.View.Newest<QuestionAsked>(question => question.Question).Select(question => question.Value).Where(question => !question.Dropped)];

    // A resistor R1 on the board and a number R1 beside it are told apart by nobody who reads "R1: measure …".
    private static IEnumerable<string> Spots(OpenDossier dossier) => dossier.Session.View.Live<SpotSighting>().Select(spot => spot.Value.Spot);

    /// <summary>One bound number as the list and its own page head it.</summary>
    public static NumberRow Number(OpenDossier dossier, string name)
    {
        var value = dossier.Model.Value("reckoning:" + name);
        var bound = dossier.Model.Reckoning(name);
        var says = bound?.Binding.Says is { Length: > 0 } asked ? asked : bound?.Result?.Info.Says ?? bound?.Binding.Calculation ?? "";
        return Row(name, "reckoning:" + name, says, value, bound?.Binding.Calculation ?? "", bound?.Result);
    }

    /// <summary>Where the doubt of a result comes from, largest first.</summary>
    public static ValueList<ShareRow> Shares(ReckonResult? result) =>
        [.. (result?.Value.Shares ?? []).Where(share => share.Share >= Notable).OrderByDescending(share => share.Share).ThenBy(share => share.Input, StringComparer.Ordinal).Select(share => new ShareRow(share.Input, share.Share))];

    // What was clicked as a shape was measured as well as what was clicked as a length.
    private static IEnumerable<NumberRow> Measured(OpenDossier dossier) => dossier.Session.View.Live<LengthSighting>()
        .Select(length => $"length:{length.Value.Spot}:{length.Value.What}").Concat(dossier.Session.View.Live<ClickedShape>().Select(shape => ShapeReference.Of(shape.Value))).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)
        .Select(reference => dossier.Model.Value(reference)).Select(value => Row("", value.Reference, value.Says, value, "", null));

    private static NumberRow Row(string designator, string reference, string says, ModelValue value, string calculation, ReckonResult? counted) => new(
        designator,
        reference,
        says,
        value.Missing is null ? ReportContext.Print(value) : "unknown",
        value.Missing is null ? ReportContext.Interval(value) : "",
        value.Grade,
        counted is null ? "" : ReckonJson.Word(counted.Info.Maturity),
        calculation,
        Shares(counted),
        value.Missing ?? "");
}
