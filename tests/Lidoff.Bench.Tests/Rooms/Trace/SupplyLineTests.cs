using Lidoff.Bench.Rooms.Trace;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Rooms.Trace;

public sealed class SupplyLineTests : IDisposable
{
    private readonly FakeBench bench = new();

    [Fact]
    public void Rails_stand_under_what_makes_them_and_cite_their_net_or_are_a_guess() => Assert.Equal(
        [
            "0 B1", "1 rail VBAT 3.87 ± 0.01 V net VBAT", "2 U4", "3 rail VSYS 3.3 V guess", "4 U1", "4 U2",
        ],
        Lines(
            """{"kind":"rail","rail":"VSYS","v":3.3,"from":"U4","to":["U2","U1"]}""",
            """{"kind":"rail","rail":"VBAT","v":3.87,"u_v":0.01,"from":"B1","to":["U4"]}""",
            """{"kind":"net","net":"VBAT","points":["B1.1","U4.3"]}"""));

    [Fact]
    public void A_circle_ends_and_a_rail_that_nobody_makes_is_shown() => Assert.Equal(
        ["0 rail VX guess", "1 U9", "0 U1", "1 rail VA guess", "2 U2", "3 rail VB guess", "4 U1 again"],
        Lines(
            """{"kind":"rail","rail":"VA","from":"U1","to":["U2"]}""",
            """{"kind":"rail","rail":"VB","from":"U2","to":["U1"]}""",
            """{"kind":"rail","rail":"VX","to":["U9"]}"""));

    [Fact]
    public void A_dropped_rail_and_an_older_entry_of_a_rail_are_not_drawn() => Assert.Equal(
        ["0 B1", "1 rail VBAT guess", "2 U5"],
        Lines(
            """{"kind":"rail","rail":"VBAT","from":"B1","to":["U4"]}""",
            """{"kind":"rail","rail":"VBAT","from":"B1","to":["U5"]}""",
            """{"kind":"rail","rail":"VOLD","from":"B1","to":["U4"]}""",
            """{"kind":"rail","rail":"VOLD","dropped":true}"""));

    public void Dispose() => bench.Dispose();

    private IEnumerable<string> Lines(params string[] lines)
    {
        bench.Set("d", "", lines);
        return bench.View("d", dossier => TraceView.Of(dossier))!.Supplies.Select(line => line.Rail.Length > 0
            ? string.Join(' ', new[] { $"{line.Depth} rail {line.Rail}", line.Volts, line.Net.Length > 0 ? "net " + line.Net : "guess" }.Where(part => part.Length > 0))
            : $"{line.Depth} {line.Spot}{(line.Again ? " again" : "")}");
    }
}
