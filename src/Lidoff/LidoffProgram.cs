using System.CommandLine;
using System.CommandLine.Parsing;
using Lidoff.Commands;

namespace Lidoff;

/// <summary>Runs one command line. Tests start it like the real thing, with a seat of their own.</summary>
public static class LidoffProgram
{
    /// <summary>Parses <paramref name="arguments"/>, runs the command and gives its exit code; never throws.</summary>
    public static async Task<int> Run(IReadOnlyList<string> arguments, Seat seat, CancellationToken stop)
    {
        try
        {
            return await Dispatch(arguments, seat, stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            seat.Talk.Say("Stopped. What was acknowledged is stored.");
            return ExitCodes.Stopped;
        }
        catch (Exception failure)
        {
            return FaultReport.Write(failure, arguments, seat);
        }
    }

    private static async Task<int> Dispatch(IReadOnlyList<string> arguments, Seat seat, CancellationToken stop)
    {
        var first = arguments.Count > 0 ? arguments[0] : "--help";
        if (arguments is ["--version"])
        {
            // Answered before the parser is even loaded: scripts and the start benchmark ask it often.
            seat.Talk.Line(typeof(LidoffProgram).Assembly.GetName().Version?.ToString(3) ?? "");
            return ExitCodes.Done;
        }

        if (CommandTable.Later.Contains(first))
        {
            seat.Talk.Say($"lidoff {first} is promised and not built yet; `lidoff --help` lists what works today.");
            return ExitCodes.Usage;
        }

        var root = new RootCommand("Lidoff: a bench notebook that computes, for whoever opens wearables and explains them.");
        if (CommandTable.Find(first) is { } item)
        {
            root.Subcommands.Add(CommandTable.Build(first, item, seat));
        }
        else
        {
            foreach (var name in CommandTable.Names)
            {
                if (CommandTable.Find(name) is { } each) root.Subcommands.Add(CommandTable.Build(name, each, seat));
            }
        }

        var parsed = root.Parse(arguments.Count == 0 ? ["--help"] : arguments.ToArray());
        var unknown = UnknownOptions(parsed, arguments).ToList();
        if (parsed.Errors.Count + unknown.Count > 0)
        {
            foreach (var option in unknown) seat.Talk.Say(CommandSentences.UnknownOption(option));
            foreach (var said in parsed.Errors.Select(WrongCall.Says).Distinct()) seat.Talk.Say(said);
            seat.Talk.Say($"`lidoff {(CommandTable.Find(first) is null ? "" : first + " ")}--help` shows how it is called.");
            return ExitCodes.Usage;
        }

        // The parser itself only prints help; that goes over the seat like everything else.
        using var help = new StringWriter { NewLine = "\n" };
        var code = await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null, Output = help }, stop);
        if (help.ToString().TrimEnd() is { Length: > 0 } words) seat.Talk.Line(words);
        return code;
    }

    // An argument that takes any name takes a mistyped option too: what begins with a dash is one, unless it stands after "--".
    private static IEnumerable<string> UnknownOptions(ParseResult parsed, IReadOnlyList<string> arguments)
    {
        var names = arguments.SkipWhile(argument => argument != "--").ToHashSet(StringComparer.Ordinal);
        return parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(argument => argument.Tokens).Select(token => token.Value)
            .Where(value => value.TrimStart('-') is { Length: > 0 } word && word.Length < value.Length && char.IsAsciiLetter(word[0]) && !names.Contains(value));
    }
}
