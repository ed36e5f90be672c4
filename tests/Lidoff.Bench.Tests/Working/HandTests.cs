using Lidoff.Bench.Hosting;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Tests.Working;

/// <summary>Keys come faster than a disk stores: what is pressed after something means what came of it, never what stood before.</summary>
public sealed class HandTests : IDisposable
{
    private readonly FakeBench bench = new();
    private readonly Hand hand;
    private readonly ManualResetEventSlim disk = new(true);

    public HandTests()
    {
        bench.Set("d", "", """{"kind":"spot","spot":"U1"}""");
        bench.BeforeNote = () => Assert.True(disk.Wait(TimeSpan.FromSeconds(30)));
        var options = new BenchOptions { Data = bench, Program = "Lidoff.Bench.Tests", Unguessable = b => b.Fill(1), Log = _ => { } };
        hand = new(bench, new(), new HeadsWatch(options));
    }

    [Fact]
    public async Task Undo_pressed_while_a_note_is_being_stored_takes_that_note_back()
    {
        await hand.Note("d", "spot U2", Line.Of("spot").Set("spot", "U2"));
        disk.Reset();
        var note = hand.Note("d", "spot U3", Line.Of("spot").Set("spot", "U3"));
        var undo = hand.Undo("d");
        disk.Set();
        await Task.WhenAll(note, undo);
        Assert.Equal(["U1", "U2"], Spots());
        Assert.Equal("Taken back: spot U3.", hand.Said);
    }

    [Fact]
    public async Task Redo_pressed_while_an_undo_is_being_stored_brings_it_again()
    {
        await hand.Note("d", "spot U2", Line.Of("spot").Set("spot", "U2"));
        disk.Reset();
        var undo = hand.Undo("d");
        var redo = hand.Redo("d");
        disk.Set();
        await Task.WhenAll(undo, redo);
        Assert.Equal(["U1", "U2"], Spots());
        Assert.Equal("Brought again: spot U2.", hand.Said);
    }

    [Fact]
    public async Task Two_undos_at_once_take_back_two_things()
    {
        await hand.Note("d", "spot U2", Line.Of("spot").Set("spot", "U2"));
        await hand.Note("d", "spot U3", Line.Of("spot").Set("spot", "U3"));
        disk.Reset();
        var undos = Task.WhenAll(hand.Undo("d"), hand.Undo("d"), hand.Undo("d"));
        disk.Set();
        await undos;
        Assert.Equal(["U1"], Spots());
        Assert.StartsWith("Nothing was done since the workbench started", hand.Said, StringComparison.Ordinal);
        Assert.False(hand.Refused);
    }

    public void Dispose()
    {
        bench.Dispose();
        disk.Dispose();
    }

    private List<string> Spots() => bench.View("d", dossier => dossier.Session.View.Live<SpotSighting>().Select(spot => spot.Value.Spot).Order(StringComparer.Ordinal).ToList())!;
}
