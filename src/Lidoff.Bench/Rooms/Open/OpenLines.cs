using Lidoff.Bench.Rooms.Open.Typed;
using Lidoff.Bench.Working;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What was stored, written again as lines, so that one field can be put right and the rest stays.</summary>
internal static class OpenLines
{
    /// <summary>A specimen.</summary>
    public static Line Of(SpecimenSighting of) => new SpecimenTyped(
        of.Specimen, of.Says, of.From, of.Bought?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "", of.Revision, of.MayDestroy, of.MassG, of.MassG is null ? null : of.UG).Line();

    /// <summary>A state.</summary>
    public static Line Of(StateSighting of, string specimen) => new StateTyped(of.Name, of.Says, of.Lights, of.Buttons, of.LastsS, of.CurrentUa, of.UUa).Line(specimen);

    /// <summary>A step.</summary>
    public static Line Of(StepSighting of, string specimen) => Line.Of("step").Set("specimen", specimen).Set("does", of.Does).Set("act", ActWords.Word(of.Act)).Set("tool", of.Tool)
        .Set("setting", of.Setting).Set("minutes", of.Minutes).Set("destroys", of.Destroys).Set("picture", of.Picture).Set("plan", of.Plan);

    /// <summary>How a cell stands.</summary>
    public static Line Cell(CellState of, bool connected) => Line.Of("cell").Set("specimen", of.Specimen).Set("spot", of.Spot).Set("connected", connected);

    /// <summary>The same in a few words.</summary>
    public static string CellSays(bool connected) => connected ? "cell connected" : "cell disconnected";

    /// <summary>A plan.</summary>
    public static Line Of(StepPlanned of, string specimen) => Line.Of("plan").Set("specimen", specimen).Set("plan", of.Plan).Set("does", of.Does).Set("act", ActWords.Word(of.Act))
        .Set("destroys", of.Destroys).Set("record_first", of.RecordFirst).Set("recorded", of.Recorded).Set("after", of.After).Set("why", of.Why).Set("dropped", of.Dropped ? true : null);

    /// <summary>The step that carries a plan out.</summary>
    public static Line Done(StepPlanned of, string specimen) =>
        Line.Of("step").Set("specimen", specimen).Set("does", of.Does).Set("act", ActWords.Word(of.Act)).Set("destroys", of.Destroys).Set("plan", of.Plan);
}
