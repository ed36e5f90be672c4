using System.CommandLine;
using Lidoff.Talking;
using Lidoff.TestSupport;

namespace Lidoff.Tests;

/// <summary>Seats for commands under test: recorded talk, a stepping clock, and folders of the test's own.</summary>
internal static class Seats
{
    public static Seat Of(ITalk talk, string folder) => new(
        talk,
        new SteppingClock(),
        AppContext.BaseDirectory,
        folder,
        Path.Combine(folder, "default"),
        new Option<string?>("--workspace"));
}
