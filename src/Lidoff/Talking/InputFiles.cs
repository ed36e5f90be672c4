using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Talking;

/// <summary>Opens the files a command was given; <c>-</c> is standard input.</summary>
public static class InputFiles
{
    /// <summary>The whole file under the cap that JSON lines have.</summary>
    public static Outcome<byte[]> Lines(Seat seat, string argument) => Open(seat, argument).Then(stream =>
    {
        using (stream) return JsonLines.Take(stream);
    });

    /// <summary>A stream the caller closes.</summary>
    public static Outcome<Stream> Open(Seat seat, string argument)
    {
        if (argument == "-") return seat.Talk.Input;
        try
        {
            var path = seat.PathOf(argument);
            return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return CommandSentences.NoInput(argument, trouble);
        }
    }
}
