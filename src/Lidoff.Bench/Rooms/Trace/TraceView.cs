using System.Globalization;
using Lidoff.Bench.Rooms.Trace.Book;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Resuming;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>What the room Trace shows.</summary>
/// <param name="Touches">What was probed, the newest first.</param>
/// <param name="Pads">Pads, the newest entry of each, in natural order.</param>
/// <param name="Rails">Rails, the newest entry of each that was not dropped, in natural order.</param>
/// <param name="Drawn">Nets drawn by hand.</param>
/// <param name="Nets">What touches and the hand come to together.</param>
/// <param name="Buses">What answered on buses, and registers that were read.</param>
/// <param name="Book">Both sides.</param>
/// <param name="CellOut">True when every cell anybody spoke of is disconnected; null when nobody spoke of one.</param>
/// <param name="Names">Points and spots to propose while typing.</param>
/// <param name="Pinned">Spots that a probe can only be on by one of their pins.</param>
public sealed record TraceView(
    ValueList<TouchRow> Touches, ValueList<Noted<PadSighting>> Pads, ValueList<Noted<RailDrawn>> Rails, ValueList<Noted<NetDrawn>> Drawn, NetBook Nets, ValueList<BusRow> Buses, BookView Book, bool? CellOut,
    ValueList<string> Names, ValueList<string> Pinned)
{
    /// <summary>The room as the dossier stands; the pictures of the book by their hashes, null for the best, and how they lie.</summary>
    public static TraceView Of(OpenDossier dossier, string? left = null, string? right = null, BookWay way = BookWay.Open)
    {
        var view = dossier.Session.View;
        var touches = view.Live<TouchSighting>();
        var pads = Noted<PadSighting>.Newest(view, pad => pad.Point.Text);
        var drawn = Noted<NetDrawn>.All(view);
        var cells = ResumeCard.Of(view).Cells.Where(cell => cell.Connected is not null).ToList();
        ValueList<Noted<RailDrawn>> rails = [.. Noted<RailDrawn>.Newest(view, rail => rail.Rail).Where(rail => !rail.Value.Dropped)];
        var nets = NetBook.Of(view);
        return new(
            [.. touches.Select(touch => new TouchRow(touch.Id, touch.Value.A.Text, touch.Value.B.Text, Readings.Words(touch.Value), Readings.Kind(touch.Value), touch.Specimen)).Reverse()],
            pads,
            rails,
            drawn,
            nets,
            [.. BusesOf(view)],
            BookView.Of(dossier, left, right, way),
            cells.Count == 0 ? null : cells.TrueForAll(cell => cell.Connected == false),
            [
                .. touches.SelectMany(touch => new[] { touch.Value.A.Text, touch.Value.B.Text }).Concat(pads.Select(pad => pad.Value.Point.Text)).Concat(drawn.Select(net => net.Value.Net))
                    .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
            ],
            [.. Noted<SpotSighting>.Newest(view, spot => spot.Spot).Where(spot => SpotClasses.Find(spot.Value.Class) is { HasPins: true }).Select(spot => spot.Value.Spot)]);
    }

    private static IEnumerable<BusRow> BusesOf(IDossierView view)
    {
        foreach (var bus in view.Live<BusSighting>())
        {
            var answered = bus.Value.Acks is { } acks ? string.Create(CultureInfo.InvariantCulture, $"answered {acks:N0} times") + (bus.Value.Nacks is > 0 and { } nacks ? string.Create(CultureInfo.InvariantCulture, $", did not {nacks:N0} times") : "") : "answered";
            yield return new(bus.Id, bus.Value.Type switch { BusType.OneWire => "1-wire", BusType.I2c => "I²C", var other => other.ToString().ToUpperInvariant() }, Address(bus.Value.Address), bus.Value.Spot, answered);
        }

        foreach (var read in view.Live<IdentitySighting>())
        {
            yield return new(read.Id, "", Address(read.Value.Address), read.Value.Spot, string.Create(CultureInfo.InvariantCulture, $"register 0x{read.Value.Register:x2} reads 0x{read.Value.Value:x2}"));
        }
    }

    private static string Address(int? address) => address is { } at ? string.Create(CultureInfo.InvariantCulture, $"0x{at:x2}") : "";
}
