using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Weighing.Quarrels;

/// <summary>What a voltage at a point may be: of ground, of a rail, of a cell that empties, of a line that signals.</summary>
internal sealed class SupplyPoints
{
    // Below a diode's drop a supply that is off reads what leaks into it. From empty to full a lithium cell goes from 2.5 to below 4.5 V. Common practice, no source.
    private const double OffVolts = 0.7;
    private const double EmptyVolts = 2.5;
    private const double FullVolts = 4.5;

    // Roles of pads whose voltage says what they signal.
    private static readonly HashSet<string> Signals = ["input", "output", "bidirectional", "tri_state", "open_collector", "open_emitter"];

    private readonly NetBook nets;
    private readonly IReadOnlyList<Sighting<RailDrawn>> rails;
    private readonly HashSet<string> cells;
    private readonly HashSet<string> lines;

    public SupplyPoints(IDossierView view)
    {
        nets = NetBook.Of(view);
        rails = [.. view.Newest<RailDrawn>(rail => rail.Rail).Where(rail => !rail.Value.Dropped)];
        cells = [.. view.Live<CellSighting>().Select(cell => cell.Value.Spot).Concat(view.Live<SpotSighting>().Where(spot => spot.Value.Class == "cell").Select(spot => spot.Value.Spot)).Where(spot => spot.Length > 0)];
        lines = [.. view.Newest<PadSighting>(pad => pad.Point.Text).Where(pad => Signals.Contains(pad.Value.Role)).Select(pad => pad.Value.Point.Text)];
    }

    /// <summary>What ground is, or the voltage of the rail whose net the point is on, with the entry that says so; null where nothing does.</summary>
    public (double V, double U, string Name, EntryId? Entry, string Specimen)? Known(TouchPoint point)
    {
        if (Grounded(point)) return (0, 0, NetEvidence.Ground, null, "");
        var on = Rails(point).Where(rail => rail.Value.V is not null).ToList();
        // A point under two rails is another quarrel.
        return on.Count == 1 ? (on[0].Value.V!.Value, Doubt(on[0].Value), on[0].Value.Rail, on[0].Id, on[0].Specimen) : null;
    }

    /// <summary>True where another state of the device explains that a pair reads one voltage and the other: it is off in one of them, one end is a line that signals, or a cell was fuller.</summary>
    public bool StateExplains(TouchPoint a, TouchPoint b, double one, double other)
    {
        if (Math.Min(Math.Abs(one), Math.Abs(other)) < OffVolts || lines.Contains(a.Text) || lines.Contains(b.Text)) return true;
        return (OnCell(a) || OnCell(b)) && Charge(one) && Charge(other);
    }

    /// <summary>The same for a voltage read between two points of which <paramref name="ofA"/> and <paramref name="ofB"/> are said, V against ground.</summary>
    public bool StateExplains(TouchPoint a, TouchPoint b, double read, double ofA, double ofB) => StateExplains(a, b, read, ofA - ofB)
        || (OnCell(a) && Charge(ofA) && read + ofB is >= EmptyVolts and <= FullVolts) || (OnCell(b) && Charge(ofB) && ofA - read is >= EmptyVolts and <= FullVolts);

    private static bool Charge(double volts) => Math.Abs(volts) is >= EmptyVolts and <= FullVolts;

    private bool Grounded(TouchPoint point) => point.Text == NetEvidence.Ground || nets.NetOf(point)?.Points.Any(each => each.Text == NetEvidence.Ground) == true || nets.NetOf(point)?.Names.Contains(NetEvidence.Ground) == true;

    private bool OnCell(TouchPoint point) => cells.Contains(point.Spot) || Rails(point).Any(rail => cells.Contains(rail.Value.From))
        || nets.NetOf(point)?.Points.Any(each => cells.Contains(each.Spot)) == true;

    // A rail that was drawn without naming its net is a name that a point or a net may bear.
    private IEnumerable<Sighting<RailDrawn>> Rails(TouchPoint point)
    {
        var net = nets.NetOf(point);
        return rails.Where(rail => (rail.Value.Net.Length > 0 ? rail.Value.Net : rail.Value.Rail) is var name
            && (point.Text == name || net?.Name == name || net?.Names.Contains(name) == true || net?.Points.Any(each => each.Text == name) == true));
    }

    // A rail that a person settled without a doubt is taken as written, to a twentieth, as the supply drawing takes it.
    private static double Doubt(RailDrawn rail) => rail.UV ?? Math.Abs(rail.V!.Value) / 60;
}
