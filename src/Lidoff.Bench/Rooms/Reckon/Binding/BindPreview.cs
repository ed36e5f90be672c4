using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Reckoning.Bound;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Reckon.Binding;

/// <summary>What a number would be if it were bound as typed: computed, not stored.</summary>
/// <param name="Value">Value with its doubt; empty where there is none.</param>
/// <param name="Interval90">90 % interval; empty where there is none.</param>
/// <param name="Grade">How well it would be known, in words.</param>
/// <param name="Shares">Where its doubt would come from.</param>
/// <param name="Faults">Why there is no value, each placed at its input.</param>
public sealed record BindPreview(string Value, string Interval90, string Grade, ValueList<ShareRow> Shares, ValueList<Fault> Faults)
{
    /// <summary>Reckons in the dossier as it stands. The entry is of the preview alone: it has no id that any other could have.</summary>
    public static BindPreview Of(OpenDossier dossier, ReckonBinding binding)
    {
        var draft = new Sighting<ReckonBinding>(new Entry(new EntryId(new string('0', 64)), dossier.Session.Name, "reckon", 1, "", 0, null, [], [], default, "", ""), "", binding);
        var bound = ReckonBook.Reckon([draft], new Source(dossier.Model))[0];
        if (bound.Result is not { } result) return new("", "", "", [], [.. InputWords.Said(bound.Faults, binding.Calculation)]);
        var value = result.Value;
        return new(
            SpokenQuantity.Of(value.Value, value.U, result.Info.Unit),
            value.U > 0 ? SpokenQuantity.Interval(value.Interval90.Low, value.Interval90.High, result.Info.Unit) : "",
            bound.Grade + " " + Evidence.Grading.Grades.Says(bound.Grade),
            ReckonView.Shares(result),
            []);
    }

    private sealed class Source(DossierModel model) : IInputSource
    {
        public Outcome<SourcedInput> Find(string reference, string where)
        {
            var value = model.Value(reference);
            return value.Number is { } number
                ? new SourcedInput(number.Source.Length > 0 ? number : number.From(reference), value.Unit.Dimension, value.Grade, value.RestsOn)
                : new Fault(where, "a reference to a number", value.Missing ?? $"'{reference}' is a name, not a number.");
        }
    }
}
