using System.Globalization;
using Lidoff.Demo;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tests.Demo;

/// <summary>Bus capture and current trace of the demo, read back by readers of the tests' own, hold what the demo notes of them.</summary>
[Collection("the demo")]
public sealed class DemoCaptureTests(LaidDemo demo)
{
    private readonly TwoWire bus = TwoWire.Read(ValueChanges.Read(demo.Text(DemoBus.Name)));
    private readonly List<(double S, double A)> current = Rows(demo.Text(DemoCurrent.Name));

    private IDossierView View => demo.Dossier.Session.View;

    // UM10204, table of the bus lines' timing, Standard-mode: at most 100 kHz; tHD;STA 4.0, tLOW 4.7, tHIGH 4.0, tSU;STO 4.0, tBUF 4.7 µs,
    // tSU;DAT 250 ns at least (4.7, 4.0 and 250 as in its public copies, the others from memory).
    [Theory]
    [InlineData("tHD;STA", 4_000)]
    [InlineData("tLOW", 4_700)]
    [InlineData("tHIGH", 4_000)]
    [InlineData("tSU;DAT", 250)]
    [InlineData("tSU;STO", 4_000)]
    [InlineData("tBUF", 4_700)]
    public void The_bus_keeps_the_times_of_standard_mode(string name, double leastNs) => Assert.True(bus.Shortest[name] >= leastNs, $"{bus.Shortest[name]} ns");

    [Fact]
    public void The_bus_runs_at_100_kHz() => Assert.All(bus.Periods, ns => Assert.Equal(100e3, 1e9 / ns, 6));

    [Fact]
    public void Who_answered_is_noted_as_often_as_the_capture_holds_it()
    {
        // Answers to addresses alone are counted, as docs/contracts.md counts them: 20 reads of a register are 40.
        var answered = bus.Transfers.GroupBy(each => each.Address).ToDictionary(group => group.Key, group => (Acks: (long)group.Count(each => each.Answers[0]), Nacks: (long)group.Count(each => !each.Answers[0])));
        var noted = View.Live<BusSighting>().Select(each => each.Value).Where(each => each.Type == BusType.I2c).ToDictionary(each => each.Address!.Value, each => (each.Acks!.Value, each.Nacks!.Value));
        Assert.Equal(noted, answered.Where(each => each.Value.Acks > 0).ToDictionary());
        Assert.Equal([0x52, 0x53], noted.Keys.Order());
        Assert.Equal((0, 1), answered[0x1e]);
        Assert.Equal(3, answered.Count);
    }

    [Fact]
    public void What_a_register_returned_is_noted_as_the_capture_holds_it()
    {
        var noted = View.Live<IdentitySighting>().Single(each => each.Value.Spot == "U7").Value;
        // Register 0 of this accelerometer always reads 0xE5 (its data sheet, from memory).
        Assert.Equal((0x00, 0xE5ul), ((int)noted.Register, noted.Value));
        Assert.Contains(Reads(0x53, (byte)noted.Register), bytes => bytes.SequenceEqual(new[] { (byte)noted.Value }));
    }

    [Fact]
    public void The_clock_moves_one_second_between_looks_a_second_apart()
    {
        // Seconds, minutes, hours, weekday, date, month, year, each two decimal digits (the clock's data sheet, from memory).
        var looks = Reads(0x52, 0x00).Select(bytes => bytes.Select(each => ((each >> 4) * 10) + (each & 15)).ToList()).ToList();
        var times = looks.Select(each => new DateTime(2000 + each[6], each[5], each[4], each[2], each[1], each[0], DateTimeKind.Utc)).ToList();
        Assert.Equal(3, times.Count);
        Assert.All(times.Zip(times.Skip(1)), pair => Assert.Equal(TimeSpan.FromSeconds(1), pair.Second - pair.First));
        Assert.Equal(DemoLines.FirstDay.Date, times[0].Date);
        // Monday is 1 where Sunday is 0.
        Assert.All(looks, look => Assert.Equal((int)times[0].DayOfWeek, look[3]));
        var seen = bus.Transfers.Where(each => each is { Address: 0x52, Reads: true }).Select(each => each.Ns).ToList();
        Assert.All(seen.Zip(seen.Skip(1)), pair => Assert.Equal(1e9, pair.Second - pair.First, 1e3));
    }

    // A board that lies still feels 1 g upwards: 256 steps a g, of which makers allow a tenth more or less (data sheet, from memory).
    [Fact]
    public void The_accelerometer_feels_the_earth_and_little_else() => Assert.All(Reads(0x53, 0x32), bytes =>
    {
        var axes = new[] { 0, 2, 4 }.Select(at => (short)(bytes[at] | (bytes[at + 1] << 8)) / 256.0).ToList();
        Assert.InRange(axes[2], 0.9, 1.1);
        Assert.InRange(Math.Abs(axes[0]) + Math.Abs(axes[1]), 0, 0.1);
    });

    [Fact]
    public void The_trace_is_500_samples_a_second_over_30_seconds()
    {
        Assert.Equal(15_000, current.Count);
        Assert.All(current.Select((row, i) => (row.S, i)), each => Assert.Equal(each.i / 500.0, each.S, 9));
    }

    // Levels as the demo notes its states, each from the samples in which nothing else runs: by hand from the picture of the trace.
    [Theory]
    [InlineData("idle", 1.0, 1.4)]
    [InlineData("beacon", 2.5, 2.505)]
    [InlineData("bark", 12.702, 12.818)]
    [InlineData("night lamp", 16.6, 17.4)]
    public void A_state_draws_what_is_noted_of_it(string name, double from, double to)
    {
        var state = View.Live<StateSighting>().Single(each => each.Value.Name == name).Value;
        var mean = current.Where(row => row.S >= from && row.S <= to).Average(row => row.A) * 1e6;
        // Within the doubt that is noted beside it.
        Assert.InRange(mean, state.CurrentUa!.Value - state.UUa!.Value, state.CurrentUa.Value + state.UUa.Value);
    }

    [Fact]
    public void Barks_and_beacons_last_as_long_as_noted_and_come_as_often()
    {
        var states = View.Live<StateSighting>().ToDictionary(each => each.Value.Name, each => each.Value);
        // Above 3 mA and below 4.5 mA it barks; above that it sends; a bark covers the beacon that falls into it.
        var barks = Runs(a => a is > 3e-3 and < 4.5e-3);
        var beacons = Runs(a => a >= 4.5e-3);
        Assert.Equal(5, barks.Count);
        Assert.Equal(30 - 1, beacons.Count);
        Assert.All(barks, run => Assert.Equal(states["bark"].LastsS!.Value, run.Samples / 500.0, 0.004));
        Assert.All(beacons, run => Assert.Equal(states["beacon"].LastsS!.Value, run.Samples / 500.0, 0.002));
        Assert.All(beacons, run => Assert.Equal(0.5, run.From - Math.Floor(run.From), 0.002));
    }

    // The runtime rests on two numbers: charge between barks and charge of a bark. Both are integrated here from the trace (sum of
    // samples times 2 ms) and lie within the doubt that the demo types.
    [Fact]
    public void What_the_runtime_rests_on_is_what_the_trace_integrates_to()
    {
        var result = demo.Dossier.Model.Reckoning("R2")!.Result!;
        double Given(string key) => result.Inputs.Single(input => input.Input.Key == key).Value.Value;
        double U(string key) => result.Inputs.Single(input => input.Input.Key == key).Value.U;
        var quiet = current.Where(row => row.S is >= 6 and < 12).ToList();
        Assert.Equal(37.3e-6, Given("sleep_current"), 12);
        Assert.InRange(quiet.Average(row => row.A), Given("sleep_current") - U("sleep_current"), Given("sleep_current") + U("sleep_current"));
        var idle = current.Where(row => row.S is >= 1 and <= 1.4).Average(row => row.A);
        var bark = current.Where(row => row.S is >= 12.6 and < 13).Sum(row => (row.A - idle) / 500);
        Assert.InRange(bark, Given("event_charge") - U("event_charge"), Given("event_charge") + U("event_charge"));
    }

    private IEnumerable<List<byte>> Reads(int address, byte register) => bus.Transfers.Zip(bus.Transfers.Skip(1))
        .Where(pair => pair.First.Address == address && !pair.First.Reads && pair.First.Bytes.SequenceEqual(new[] { register }) && pair.Second.Address == address && pair.Second.Reads)
        .Select(pair => pair.Second.Bytes);

    private List<(double From, int Samples)> Runs(Func<double, bool> level)
    {
        var runs = new List<(double From, int Samples)>();
        var on = false;
        foreach (var (s, a) in current)
        {
            var now = level(a);
            if (now && !on) runs.Add((s, 1));
            else if (now) runs[^1] = (runs[^1].From, runs[^1].Samples + 1);
            on = now;
        }

        return runs;
    }

    private static List<(double S, double A)> Rows(string csv)
    {
        var lines = csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#').ToList();
        Assert.Equal("t_s,i_a", lines[0]);
        return [.. lines.Skip(1).Select(line => line.Split(',')).Select(each => (double.Parse(each[0], CultureInfo.InvariantCulture), double.Parse(each[1], CultureInfo.InvariantCulture)))];
    }
}
