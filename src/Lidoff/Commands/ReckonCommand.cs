using System.CommandLine;
using Lidoff.Reckoning;
using Lidoff.Reckoning.Reckon;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff reckon NAME key=value… --json</c>: one engineering number; <c>lidoff reckon --list --json</c>: which there are.</summary>
public sealed class ReckonCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "One engineering number with its doubt, what the doubt comes from, and the source of the formula.";

    /// <inheritdoc/>
    public string Example => "reckon capacity_from_energy energy=0.45 voltage=3.6..3.8 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var words = new Argument<string[]>("NAME key=value")
        {
            Description = "The calculation and its inputs: 3.7, 3.7±0.1, 3.5..4.2, 3.5..3.7..4.2, each with or without a unit, or file.csv#column.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var list = new Option<bool>("--list") { Description = "Names every calculation with its inputs and how many outside values it is checked against." };
        var json = new Option<bool>("--json") { Description = "JSON on standard output, one object a line." };
        var seed = new Option<ulong>("--seed") { Description = "Fixes the Monte Carlo draws.", DefaultValueFactory = _ => 1 };
        command.Arguments.Add(words);
        command.Options.Add(list);
        command.Options.Add(json);
        command.Options.Add(seed);
        command.SetAction(parsed => parsed.GetValue(list)
            ? List(parsed.GetValue(json), seat)
            : Reckon(parsed.GetValue(words) ?? [], parsed.GetValue(seed), parsed.GetValue(json), seat));
    }

    private static int List(bool asJson, Seat seat)
    {
        foreach (var item in Calculations.All)
        {
            if (asJson) seat.Talk.Json(writer => ReckonJson.WriteListed(writer, item.Info));
            else seat.Talk.Line($"{item.Info.Name}: {item.Info.Says}");
        }

        return ExitCodes.Done;
    }

    private static int Reckon(string[] words, ulong seed, bool asJson, Seat seat)
    {
        var wrong = words.Skip(1).Where(word => word.IndexOf('=', StringComparison.Ordinal) < 1).ToList();
        if (words.Length == 0) seat.Talk.Say(ReckoningSentences.NoName);
        foreach (var word in wrong) seat.Talk.Say(ReckoningSentences.NoPair(word).Say);
        if (words.Length == 0 || wrong.Count > 0) return ExitCodes.Usage;

        var columns = new CsvColumns(file => File.OpenRead(seat.PathOf(file)));
        var inputs = words.Skip(1).Select(word => word.Split('=', 2)).Select(pair => new TypedInput(pair[0].Trim(), pair[1])).ToList();
        var reckoned = new Reckoner(columns).Reckon(new ReckonRequest(words[0], inputs, seed));
        if (!reckoned.TryValue(out var result))
        {
            seat.Talk.SayFaults(reckoned.Faults);
            return ExitCodes.Refused;
        }

        if (asJson) seat.Talk.Json(writer => ReckonJson.Write(writer, result));
        else Show(result, seat);
        return ExitCodes.Done;
    }

    private static void Show(ReckonResult result, Seat seat)
    {
        foreach (var line in ReckoningSentences.Result(result)) seat.Talk.Line(line);
        foreach (var caution in result.Cautions) seat.Talk.Say(caution);
    }
}
