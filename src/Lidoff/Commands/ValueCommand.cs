using System.CommandLine;
using Lidoff.Numbers.Typed;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff value CODE… [--sort resistor] [--json]</c>: every reading of codes and colour bands on passive parts, with odds.</summary>
public sealed class ValueCommand : ILidoffCommand
{
    private static readonly string[] Sorts = [.. Enum.GetNames<PassiveSort>().Select(name => name.ToLowerInvariant())];

    private readonly Argument<string[]> codes = new("CODE") { Description = "What stands on the part: 4R7, 473, 01C, 2A474J, \"10 16V\"; or its colour bands in one word, brown-black-red-gold or BNBKRDGD, ? for a band that cannot be told.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> sort = new("--sort") { Description = $"What sort of part it stands on: {string.Join(", ", Sorts)}.", HelpName = "SORT" };
    private readonly Option<bool> json = new("--json") { Description = "One JSON object a code on standard output." };

    /// <inheritdoc/>
    public string Says => "Every reading of value codes and colour bands on passive parts with its probability, from either end where nothing tells which way up they stand.";

    /// <inheritdoc/>
    public string Example => "value 10R 901 brown-black-red-gold --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        sort.AcceptOnlyFromAmong(Sorts);
        command.Arguments.Add(codes);
        command.Options.Add(sort);
        command.Options.Add(json);
        command.SetAction(parsed => Run(parsed.GetValue(codes)!, parsed.GetValue(sort) is { } word ? Enum.Parse<PassiveSort>(word, ignoreCase: true) : null, parsed.GetValue(json), seat));
    }

    private static int Run(string[] codes, PassiveSort? sort, bool json, Seat seat)
    {
        var refused = 0;
        foreach (var code in codes)
        {
            var faults = TypedBands.Looks(code) ? Bands(code, sort, json, seat) : Code(code, sort, json, seat);
            if (faults.Count == 0) continue;
            refused++;
            if (json) seat.Talk.JsonFault(code, faults);
            seat.Talk.SayFaults(faults);
        }

        return refused == 0 ? ExitCodes.Done : refused == codes.Length ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static IReadOnlyList<Numbers.Failing.Fault> Code(string code, PassiveSort? sort, bool json, Seat seat)
    {
        var odds = CodeOdds.Of(code, sort);
        if (odds.Readings.Count == 0) return [TypedSentences.NoCode(code)];
        if (json) seat.Talk.Json(writer => { writer.WriteString("code", code); CodeWriter.WriteKeys(writer, odds); });
        else foreach (var each in odds.Readings) seat.Talk.Line(CommandSentences.Value(code, each.Reading.ToString(), each.OnHead ? CommandSentences.OnHead(each.As) : "", each.P));
        return [];
    }

    private static IReadOnlyList<Numbers.Failing.Fault> Bands(string code, PassiveSort? sort, bool json, Seat seat)
    {
        var typed = TypedBands.Read(code);
        if (!typed.TryValue(out var bands)) return typed.Faults;
        var odds = BandOdds.Of(bands, BandOdds.BegunAtTheFirst, sort);
        if (odds.Readings.Count == 0) return [TypedSentences.NoBandReading(code)];
        if (json) seat.Talk.Json(writer => { writer.WriteString("code", code); CodeWriter.WriteKeys(writer, odds); });
        else foreach (var each in odds.Readings) seat.Talk.Line(CommandSentences.Value(code, each.Reading.ToString(), each.FromEnd ? CommandSentences.FromEnd : "", each.P));
        return [];
    }
}
