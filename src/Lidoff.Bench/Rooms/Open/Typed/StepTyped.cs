using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;
using Lidoff.Opening.Cautioning;

namespace Lidoff.Bench.Rooms.Open.Typed;

/// <summary>
/// A step, done or planned, as it is typed on one line: <c>cut the seam #cut @scalpel 4min !seal</c>. Words are what is done; a word
/// that begins with a sign opens a part that goes on to the next sign: <c>#</c> act, <c>@</c> tool, <c>~</c> setting, <c>!</c> what it
/// destroys, <c>&amp;</c> picture, <c>?</c> what to record first, <c>^</c> the plan that comes before. <c>4min</c> or <c>2 h</c> is the time, <c>B1=3.61g</c> a mass
/// (<c>=23.4g</c> the whole). A doubled sign is the sign itself.
/// </summary>
/// <param name="Does">What is done.</param>
/// <param name="Act">Its act: the one typed, else the first word where that names one, else other.</param>
/// <param name="Tool">Tool; empty when not typed.</param>
/// <param name="Setting">Setting; empty when not typed.</param>
/// <param name="Minutes">Time it took, min.</param>
/// <param name="Destroys">What is lost by it; empty when not typed.</param>
/// <param name="Picture">Picture; empty when not typed.</param>
/// <param name="RecordFirst">What to record first.</param>
/// <param name="After">Plans that come first.</param>
/// <param name="Masses">What was weighed.</param>
public sealed record StepTyped(
    string Does, StepAct Act, string Tool, string Setting, double? Minutes, string Destroys, string Picture, ValueList<string> RecordFirst, ValueList<string> After, ValueList<MassTyped> Masses)
{
    /// <summary>Opens the act.</summary>
    public const char ActSign = '#';

    /// <summary>Opens the tool.</summary>
    public const char ToolSign = '@';

    /// <summary>Reads the line; all faults at once.</summary>
    public static Outcome<StepTyped> Read(string? text)
    {
        var faults = new List<Fault>();
        var parts = StepWords.Of(text).ToList();
        double? minutes = null;
        var masses = new List<MassTyped>();
        StepAct? act = null;
        foreach (var part in parts)
        {
            switch (part.Sign)
            {
                case StepWords.Time:
                    var time = TypedQuantity.Read(part.Text, Units.Minute, "minutes");
                    if (minutes is not null) faults.Add(OpenSentences.TwoTimes);
                    else if (!time.TryValue(out var span)) faults.AddRange(time.Faults);
                    else if (span.Quantity.Si < 0) faults.Add(OpenSentences.TimeBelowZero(part.Text));
                    else minutes = span.Quantity.In(Units.Minute);
                    break;
                case StepWords.Mass:
                    var mass = MassTyped.Read(part.Text.Replace('=', ' '));
                    if (mass.TryValue(out var weighed)) masses.Add(weighed);
                    else faults.AddRange(mass.Faults);
                    break;
                case '#':
                    if (act is not null) faults.Add(OpenSentences.TwoActs);
                    else if (ActWords.Find(part.Text) is { } found) act = found;
                    else faults.Add(OpenSentences.NoSuchAct(part.Text));
                    break;
            }
        }

        var does = Joined(parts, ' ', " ");
        if (does.Length == 0) faults.Add(OpenSentences.NothingDone);
        if (faults.Count > 0) return Outcome<StepTyped>.Failed(faults);
        return new StepTyped(
            does, act ?? ActIn(text), Joined(parts, '@', ", "), Joined(parts, '~', ", "), minutes, Joined(parts, '!', ", "), Joined(parts, '&', " "),
            Each(parts, '?'), Each(parts, '^'), [.. masses]);
    }

    /// <summary>The act that a line not yet finished names: by #, else by its first word; other where neither does.</summary>
    public static StepAct ActIn(string? text)
    {
        var parts = StepWords.Of(text).ToList();
        if (parts.FirstOrDefault(part => part.Sign == '#') is { Text.Length: > 0 } typed) return ActWords.Find(typed.Text) ?? StepAct.Other;
        var first = parts.FirstOrDefault(part => part.Sign == ' ')?.Text.Split(' ')[0] ?? "";
        return ActWords.Find(first) ?? StepAct.Other;
    }

    /// <summary>The text of a part of a line not yet finished; empty where there is none.</summary>
    public static string Part(string? text, char sign) => StepWords.Of(text).FirstOrDefault(part => part.Sign == sign)?.Text ?? "";

    /// <summary>The line with its part <paramref name="sign"/> replaced, or taken out when <paramref name="value"/> is empty.</summary>
    public static string With(string? text, char sign, string value)
    {
        var kept = StepWords.Of(text).Where(part => part.Sign != sign).Select(part => part.Raw);
        return string.Join(' ', value.Length > 0 ? kept.Append(sign + value) : kept);
    }

    /// <summary>A plan's line: what it comes after must be among the <paramref name="plans"/>.</summary>
    public static Outcome<StepTyped> ReadPlan(string? text, IReadOnlyCollection<string> plans) => Read(text).Then(step =>
    {
        var unknown = step.After.Where(name => !plans.Contains(name)).Select(name => OpenSentences.NoSuchPlan(name, plans)).ToList();
        return unknown.Count > 0 ? Outcome<StepTyped>.Failed(unknown) : step;
    });

    /// <summary>The line of a step that was done: it comes after nothing.</summary>
    public static Outcome<StepTyped> ReadDone(string? text) => Read(text).Then(step => step.After.Count > 0 ? (Outcome<StepTyped>)OpenSentences.DoneAfter(step.After[0]) : step);

    /// <summary>The lines to store for a step that was done; <paramref name="specimen"/> and <paramref name="plan"/> may be empty.</summary>
    public IReadOnlyList<Line> Done(string specimen, string plan = "") =>
    [
        Line.Of("step").Set("specimen", specimen).Set("does", Does).Set("act", ActWords.Word(Act)).Set("tool", Tool).Set("setting", Setting).Set("minutes", Minutes)
            .Set("destroys", Destroys).Set("picture", Picture).Set("plan", plan),
        // The step is the first line of what is stored.
        .. Masses.Select(mass => mass.Line(specimen).Set("target_line", 1L)),
    ];

    /// <summary>The line to store for a step that is meant to be done; tool and setting go into its words, since a plan has none of its own.</summary>
    public Line Planned(string specimen, string plan)
    {
        var with = string.Join(", ", new[] { Tool, Setting }.Where(part => part.Length > 0));
        return Line.Of("plan").Set("specimen", specimen).Set("plan", plan).Set("does", with.Length > 0 ? $"{Does}, with {with}" : Does)
            .Set("act", ActWords.Word(Act)).Set("destroys", Destroys).Set("record_first", RecordFirst).Set("after", After);
    }

    private static ValueList<string> Each(IEnumerable<StepWords> parts, char sign) =>
        [.. parts.Where(part => part.Sign == sign && part.Text.Length > 0).Select(part => part.Text).Distinct(StringComparer.Ordinal)];

    private static string Joined(IEnumerable<StepWords> parts, char sign, string between) =>
        string.Join(between, parts.Select(part => (part.Sign, Text: part.Text.TrimEnd(',', ' '))).Where(part => part.Sign == sign && part.Text.Length > 0).Select(part => part.Text));
}
