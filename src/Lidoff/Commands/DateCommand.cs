using System.CommandLine;
using Lidoff.Naming.Dates;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff date CODE… [--between 2019-01..2022-06] --json</c>: every reading of date codes, and the window they share.</summary>
public sealed class DateCommand : ILidoffCommand
{
    private readonly Argument<string[]> codes = new("CODE") { Description = "Date codes of one board as they stand on the bodies.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> between = new("--between") { Description = "What every reading must lie in, such as 2019-01..2022-06." };
    private readonly Option<bool> json = new("--json") { Description = "One JSON object on standard output." };

    /// <inheritdoc/>
    public string Says => "Every reading of date codes with its probability, and the window they share.";

    /// <inheritdoc/>
    public string Example => "date 0403 0405 --between 2003-01..2006-12 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        command.Arguments.Add(codes);
        command.Options.Add(between);
        command.Options.Add(json);
        command.SetAction(parsed => Run(parsed, seat));
    }

    private int Run(ParseResult parsed, Seat seat)
    {
        WeekSpan? span = null;
        if (parsed.GetValue(between) is { } text)
        {
            var read = WeekSpan.Read(text);
            if (!read.Ok)
            {
                seat.Talk.SayFaults(read.Faults);
                return ExitCodes.Usage;
            }

            span = read.Value;
        }

        var result = DateCodes.Read(parsed.GetValue(codes)!, span);
        foreach (var code in result.Codes)
        {
            foreach (var remark in code.Remarks) seat.Talk.Say(remark);
            if (code.Fault is { } fault) seat.Talk.Say(fault.Say);
        }

        if (result.Quarrel is { } quarrel) seat.Talk.Say(quarrel.Say);
        if (parsed.GetValue(json)) seat.Talk.Json(writer => DatesWriter.WriteKeys(writer, result));
        else Show(result, seat);
        return result.Codes.All(c => c.Fault is not null) ? ExitCodes.Refused
            : result.Quarrel is not null || result.Codes.Any(c => c.Fault is not null) ? ExitCodes.Look : ExitCodes.Done;
    }

    private static void Show(DatesResult result, Seat seat)
    {
        foreach (var code in result.Codes)
        {
            foreach (var reading in code.Readings) seat.Talk.Line(FormattableString.Invariant($"{code.Code}: {reading.Weeks.From} to {reading.Weeks.To}, {100 * reading.P:0.#} %, {reading.Rule}"));
        }

        if (result.Window90 is { } window) seat.Talk.Line($"shared window (90 %): {window.From} to {window.To}");
    }
}
