using Lidoff.Bench.Rooms.Reckon.Binding;
using System.Text;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Quantities;
using Lidoff.Reckoning.Bound;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Reckon.Tree;

/// <summary>One number from its headline down to the sightings it rests on.</summary>
/// <param name="Head">Value, interval, grade, shares.</param>
/// <param name="Binding">How it is bound; null where nobody has bound it.</param>
/// <param name="Inputs">In the order of the formula.</param>
/// <param name="Improve">What to measure better; empty where there is no number.</param>
/// <param name="Cautions">What to know about it.</param>
/// <param name="Source">The formula's published source.</param>
/// <param name="Faults">Why there is no number.</param>
/// <param name="References">What its inputs may be bound to.</param>
public sealed record NumberView(
    NumberRow Head, ReckonBinding? Binding, ValueList<InputRow> Inputs, string Improve, ValueList<string> Cautions, string Source, ValueList<string> Faults, ValueList<NumberReference> References)
{
    private const int LongestEntry = 240;

    /// <summary>The number as the dossier stands.</summary>
    public static NumberView Of(OpenDossier dossier, string designator)
    {
        var bound = dossier.Model.Reckoning(designator);
        var result = bound?.Result;
        List<InputRow> inputs = result is null ? [] : [.. result.Inputs.Select(input => Input(dossier, input, result))];
        return new(
            ReckonView.Number(dossier, designator),
            bound?.Binding,
            [.. inputs],
            Better(result, inputs),
            [.. (result?.Cautions ?? []).Select(caution => InputWords.Said(caution, result!.Info))],
            result?.Info.Source ?? "",
            [.. bound is null ? [] : InputWords.Said(bound.Faults, bound.Binding.Calculation).Select(fault => fault.Say)],
            [.. NumberReferences.Of(dossier.Session.View)]);
    }

    private static string Better(ReckonResult? result, List<InputRow> inputs)
    {
        if (result is null) return "";
        var shares = ReckonView.Shares(result);
        if (shares.Count == 0 || result.Value.U <= 0) return ReckonSentences.NoDoubt;
        var largest = shares[0];
        return ReckonSentences.Improve(largest.Input.Replace('_', ' '), largest.Share, inputs.Any(input => input.Key == largest.Input && input.Sightings.Count > 0));
    }

    private static InputRow Input(OpenDossier dossier, ReckonedInput input, ReckonResult result)
    {
        var reference = result.Inputs.Count > 0 && InBinding(dossier, input);
        var value = reference ? dossier.Model.Value(input.Given) : null;
        var canonical = reference ? ValueStep.Canonical(input.Given) : "";
        return new(
            input.Input.Key,
            input.Input.Says,
            SpokenQuantity.Of(input.Value.Value, input.Value.U, input.Input.Unit),
            input.Assumed ? "assumed" : reference ? canonical : "typed",
            canonical.StartsWith("reckoning:", StringComparison.Ordinal) ? canonical["reckoning:".Length..] : "",
            value?.Grade.ToString() ?? ReckonGrade.OfTyped.ToString(),
            result.Value.Shares.FirstOrDefault(share => share.Input == input.Input.Key)?.Share,
            [.. (value?.RestsOn ?? []).Select(id => Sighting(dossier, id)).OfType<SightingRow>()]);
    }

    // What a person typed may look like a reference and still be a value; the model knows whether anything stands under it.
    private static bool InBinding(OpenDossier dossier, ReckonedInput input) => !input.Assumed && Rooms.Reckon.Binding.InputWords.Refers(input.Given) && dossier.Model.Value(input.Given).Missing is null;

    private static SightingRow? Sighting(OpenDossier dossier, EntryId id)
    {
        var view = dossier.Session.View;
        if (view.Find(id) is not { } folded) return null;
        var says = folded.Payload is { } payload ? Encoding.UTF8.GetString(payload.Span) : "erased";
        var file = view.Live<FileAdded>().FirstOrDefault(each => each.Id == id)?.Value;
        return new(id, folded.Entry.Kind, says.Length > LongestEntry ? says[..LongestEntry] + "…" : says, file?.Name ?? "", file?.Sha256 ?? "");
    }
}
