using Lidoff.Bench.Showing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Lidoff.Naming.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>What the room Name says.</summary>
public static class NameSentences
{
    /// <summary>What a mark on a passive says, read by a rule of the trade.</summary>
    public static string ValueCode(string code) => $"“{Shown.Briefly(code)}” as a value code";

    /// <summary>No spot yet.</summary>
    public const string NoSpots = "No spot yet. Point at something in a picture of the room See, and it stands here.";

    /// <summary>A spot that has nothing to go by.</summary>
    public const string NothingSeen = "Nothing was seen yet that could name it: type its mark, measure its body or count its pins.";

    /// <summary>Nothing fits a filter.</summary>
    public const string NothingFits = "No spot fits this filter.";

    /// <summary>How a decision is stored.</summary>
    public const string DecideHint = "One line why, then Enter. Your word is one more line of evidence, strong but not certain: everything seen stays, and it can be taken back.";

    /// <summary>A decision without its reason.</summary>
    public const string WhyMissing = "Say why in a few words; without a reason nobody can weigh it later.";

    /// <summary>What another specimen reads, beside the mark that counts.</summary>
    public static string Elsewhere(string specimen, string mark) => $"{specimen} reads {mark}";

    /// <summary>Whose reading the mark is where it is a machine's, and what the machine read beside a person's.</summary>
    public static IEnumerable<string> ByMachine(MachineReading? machine) => machine switch
    {
        null => [],
        { Counts: true } => [$"{WeighingSentences.ReadByMachine}, {ValueText.Percent(machine.P)}"],
        _ => [$"the machine read {machine.Mark}, {ValueText.Percent(machine.P)}"],
    };

    /// <summary>Under the field that joins specimens.</summary>
    public const string AlikeHint = "Sightings of one specimen only make up a name. Say why they hold the same part here, and what was seen on any of them counts.";

    /// <summary>Specimens that are said to be alike, for the undo list and the page.</summary>
    public static string Alike(string spot, IEnumerable<string> specimens) => $"{string.Join(" and ", specimens)} are alike at {spot}";

    /// <summary>Under the field of a family.</summary>
    public const string FamilyHint = "What all members begin with, x for a place left open: TPS6274x; left empty, the one shown. Which member it is stays open; listed ones share your word by their odds, and some of it is left for a member that no list holds.";

    /// <summary>Nothing was ticked.</summary>
    public const string NothingTicked = "Tick at least one spot whose best candidate is to be accepted.";

    /// <summary>How a table of decibans is read.</summary>
    public const string Decibans = "In decibans against the usual part of its class: +10 makes it ten times likelier, −10 ten times less.";

    /// <summary>The word for a state.</summary>
    public static string Word(Settled settled) => settled switch
    {
        Settled.Part => "part",
        Settled.Family => "family",
        Settled.None => "none of these",
        _ => "open",
    };

    /// <summary>A state as a sentence.</summary>
    public static string Verdict(Settled settled) => settled switch
    {
        Settled.Part => "Settled to the part.",
        Settled.Family => "Settled to the family only.",
        Settled.None => "Most likely in no list.",
        _ => "Open.",
    };

    /// <summary>What a person settled, for the undo list and the page.</summary>
    public static string Decided(string spot, Verdict verdict, string part) => verdict switch
    {
        Naming.Kinds.Verdict.Accept => $"{spot} is {part}",
        Naming.Kinds.Verdict.Family => $"{spot} is one of the family {part}",
        Naming.Kinds.Verdict.Reject => $"{spot} is not {part}",
        _ => $"{spot} is in no list",
    };

    /// <summary>How far all marks are that are being read.</summary>
    public static string Reading(Job job) => $"{job.Name}: {job.Progress.Words}" + (job.Progress.Total > 0 ? $", {job.Progress.Done + 1} of {job.Progress.Total}" : "");

    /// <summary>What became of all marks that were to be read.</summary>
    public static string ReadAll(ReadTally tally)
    {
        var said = new List<string>();
        if (tally.Read > 0) said.Add(Count.Of(tally.Read, "mark") + " read" + (tally.Empty > 0 ? $", on {tally.Empty} of them nothing" : ""));
        if (tally.Same > 0) said.Add($"{tally.Same} as they had been");
        if (tally.Before > 0) said.Add($"{tally.Before} passed over that these networks have read before");
        if (tally.ByPeople > 0) said.Add($"{tally.ByPeople} passed over that a person has read");
        if (tally.Unread > 0) said.Add($"{tally.Unread} passed over that could not be read before, where nothing has changed since: another picture, an outline or a box (See, Alt+B) has them tried again, or I on the spot's own page");
        return said.Count > 0 ? string.Join("; ", said) + "." : tally.Refused.Count > 0 ? "No mark was read." : "There is no mark to read: no spot is seen in a picture.";
    }

    /// <summary>Spots whose mark could not be read.</summary>
    public static string NotRead(IReadOnlyList<string> spots) => $"{Count.Of(spots.Count, "spot")} could not be read: {string.Join(", ", spots.Select(Shown.Briefly))}";
}
