using Lidoff.Bench.Rooms.Open.Typed;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What the room Open says of what was typed.</summary>
public static class OpenSentences
{
    /// <summary>Under the field of steps.</summary>
    public const string StepHint = "What was done; #act @tool ~setting !what it destroyed &picture, 4min, B1=3.61g for what was weighed. A doubled sign is the sign itself.";

    /// <summary>Asked after a step that may have changed how the cell stands.</summary>
    public const string CellAsked = "How does the cell stand now?";

    /// <summary>Under the field of plans.</summary>
    public const string PlanHint = "What is to be done; #act, !what it will destroy, ?what to record first, ^the plan that comes before (both as often as needed): cut the seam #cut !seal ?mass:whole ?picture of the seam";

    /// <summary>A plan that should come first and is none.</summary>
    public static Fault NoSuchPlan(string name, IReadOnlyCollection<string> plans) => new(
        "after", "the name of a plan", $"There is no plan {name} to come first; {(plans.Count == 0 ? "nothing is planned yet" : "there is " + string.Join(", ", plans))}.");

    /// <summary>An order typed behind a step that was done.</summary>
    public static Fault DoneAfter(string name) => new("after", "a step without ^", $"^{name} belongs to a plan; what was done stands in the order in which it was done. Leave it out, or double the sign to write it.");

    /// <summary>Under the field of specimens.</summary>
    public const string SpecimenHint = "Short name, what it is, then behind commas: 23.4 g, from where, bought 2026-01-12, revision, may be destroyed or keep whole.";

    /// <summary>Under the field of states.</summary>
    public const string StateHint = "Name: what it does, then behind commas: 6.1 µA ± 0.4 (negative while charging), lights …, press …, lasts 8 h. The energy model takes these names.";

    /// <summary>Under the field of masses.</summary>
    public const string MassHint = "B1 3.61 g ± 0.01, or the number alone for the whole. It stands beside a step only where that step is chosen here, or where it is typed in the step's own line. Without ± one unit of the last digit is taken for its doubt.";

    /// <summary>No words.</summary>
    public static Fault NothingDone { get; } = new("does", "words", "Say in words what is done, before the signs.");

    /// <summary>Two acts.</summary>
    public static Fault TwoActs { get; } = new("act", "one act", "There are two acts; a step has one. Note two steps, or write ## for the sign itself.");

    /// <summary>Two times.</summary>
    public static Fault TwoTimes { get; } = new("minutes", "one time", "There are two times; a step has one. A time that belongs to a setting stands there behind a comma or \"for\": ~110C for 5min.");

    /// <summary>A time below zero.</summary>
    public static Fault TimeBelowZero(string text) => new("minutes", "zero or more minutes", $"{Showing.Shown.Quoted(text)} is a time below zero; type how long it took, such as 4min.");

    /// <summary>No specimen's name.</summary>
    public static Fault NoSpecimen { get; } = new("specimen", "a short name such as A", "Give the specimen a short name first, such as A.");

    /// <summary>No state's name.</summary>
    public static Fault NoState { get; } = new("name", "a name such as idle", "Give the state a name first, such as idle.");

    /// <summary>An unknown act.</summary>
    public static Fault NoSuchAct(string word) => new("act", "one of " + string.Join(", ", ActWords.All), $"There is no act {Showing.Shown.Quoted(word)}; the acts are {string.Join(", ", ActWords.All)}.");

    /// <summary>No number in a mass.</summary>
    public static Fault MassMissing(string spot) => new("mass", "a mass such as 3.61 g", spot.Length > 0 ? $"How much does {Showing.Shown.Briefly(spot)} weigh? Write, for example, {Showing.Shown.Briefly(spot)} 3.61 g." : "Write what was weighed and how much: B1 3.61 g.");

    /// <summary>A mass as a range.</summary>
    public static Fault MassIsNoRange(string typed) => new("mass", "a value, with ± where it is in doubt", $"{Showing.Shown.Quoted(typed)} is a range; a scale shows one value: write 3.61 g ± 0.01.");

    /// <summary>A current as a range.</summary>
    public static Fault CurrentIsNoRange(string typed) => new("current", "a value, with ± where it is in doubt", $"{Showing.Shown.Quoted(typed)} is a range; write the current as 6.1 µA ± 0.4.");

    /// <summary>Something else than a current.</summary>
    public static Fault NoCurrent(string typed) => new("current", "a current such as 6.1 µA ± 0.4", $"{Showing.Shown.Quoted(typed)} is no current; write it with its unit, as in 6.1 µA ± 0.4.");

    /// <summary>A yes or no that is neither.</summary>
    public static Fault YesOrNo(string where, string typed) => new(where, "yes, no or nothing", $"{Showing.Shown.Quoted(typed)} is neither yes nor no.");
}
