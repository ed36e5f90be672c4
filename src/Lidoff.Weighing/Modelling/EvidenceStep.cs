using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Marks;
using Lidoff.Numbers.Quantities;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Gathers from all rooms what is known of the part at a spot, on one specimen or on several that a person said are alike. Of several sightings of one mark the newest counts, a person's before a machine's: two readings of
/// one body are one line of evidence. Bodies and pitches are averaged. What was scaled by the spot's own recognised package is left out: it would count the recognising twice.
/// </summary>
public sealed class EvidenceStep(DossierTables tables, LengthStep lengths, ShapeStep shapes) : Step<string, SpotEvidence>
{
    // Alone, a "length" may lie along either side; these say which.
    private const string LongSide = "long side";
    private const string ShortSide = "short side";

    private static readonly string[] LongNames = ["length", LongSide];
    private static readonly string[] ShortNames = ["width", ShortSide];

    /// <inheritdoc/>
    public override string Name => "evidence";

    /// <inheritdoc/>
    public override bool Same(SpotEvidence before, SpotEvidence after) => before.Told.Equals(after.Told) && before.Specimen == after.Specimen && before.Elsewhere.Equals(after.Elsewhere) && before.Machine == after.Machine;

    /// <inheritdoc/>
    public override SpotEvidence Compute(string key, IReads reads)
    {
        var told = new List<ToldEvidence>();
        var evidence = new NameEvidence();
        var all = tables.Marks.About(key, reads);
        var made = tables.Readings.About(key, reads);
        var machine = Machine(made);
        var counting = Counting(key, all.Count > 0 ? all : machine, reads);
        var (marks, readings) = (counting.Of(all), counting.Of(machine));
        // What a person read stands for the mark; the machine's reading of the same print is no second line of evidence.
        if ((marks.Count > 0 ? marks[^1] : readings.Count > 0 ? readings[^1] : null) is { } mark)
        {
            evidence = evidence with { Mark = Lattice(mark.Value) };
            told.Add(new("mark", mark.Value.Written, [mark.Id]));
        }

        if (Body(key, counting, reads) is { } body)
        {
            evidence = evidence with { BodyMm = (body.A, body.B), BodyU = body.U, HeightMm = body.Height };
            told.Add(new("body", QuantityText.Each([body.A, body.B], body.U, "mm"), body.From));
            if (body.Height is { } height) told.Add(new("height", Text($"{height:0.###} mm"), body.From));
        }

        else if (Side(key, LongSide, counting, reads) is { } length)
        {
            evidence = evidence with { LongMm = length.Value.Mm, BodyU = length.Value.UMm };
            told.Add(new(LongSide, QuantityText.Noted(length.Value.Mm, length.Value.UMm, "mm"), [.. length.From]));
        }
        else if (Side(key, ShortSide, counting, reads) is { } width)
        {
            evidence = evidence with { ShortMm = width.Value.Mm, BodyU = width.Value.UMm };
            told.Add(new(ShortSide, QuantityText.Noted(width.Value.Mm, width.Value.UMm, "mm"), [.. width.From]));
        }

        var (noted, combs) = (counting.Of(tables.Pitches.About(key, reads)), Combs(key, counting, reads));
        if (noted.Count + combs.Count > 0)
        {
            var pitch = CombinedPitch.Of(noted, combs);
            evidence = evidence with { PitchMm = pitch.Mm };
            told.Add(new("pitch", Text($"{pitch.Mm:0.###} mm"), [.. noted.Select(each => each.Id).Concat(combs.Select(comb => comb.Sighting)).Distinct().Order()]));
        }

        if (counting.Of(tables.Pins.About(key, reads)) is { Count: > 0 } pins)
        {
            var ground = pins.SelectMany(each => each.Value.Ground).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            evidence = evidence with { Pins = pins.Select(each => each.Value.Count).LastOrDefault(count => count is not null), GroundPins = ground };
            if (evidence.Pins is { } count) told.Add(new("pins", Text($"{count} pins"), Ids(pins)));
            if (ground.Count > 0) told.Add(new("ground pins", string.Join(", ", ground), Ids(pins)));
        }

        if (counting.Of(tables.Buses.About(key, reads)) is { Count: > 0 } buses && buses.LastOrDefault(each => each.Value.Address is not null) is { } bus)
        {
            evidence = evidence with { Bus = new BusFact(bus.Value.Type == BusType.I2c ? "i2c" : bus.Value.Type.ToString().ToLowerInvariant(), bus.Value.Address) };
            told.Add(new("bus", Text($"answered at 0x{bus.Value.Address:x2}"), [bus.Id]));
        }

        if (counting.Of(tables.Identities.About(key, reads)) is { Count: > 0 } identities)
        {
            var last = identities[^1];
            evidence = evidence with { Identity = new RegisterFact(last.Value.Register, (long)Math.Min(last.Value.Value, long.MaxValue)) };
            told.Add(new("identity", Text($"register 0x{last.Value.Register:x2} gave 0x{last.Value.Value:x2}"), [last.Id]));
        }

        if (counting.Of(tables.Supplies.About(key, reads)) is { Count: > 0 } supplies)
        {
            evidence = evidence with { SupplyV = supplies[^1].Value.V };
            told.Add(new("supply", Text($"{supplies[^1].Value.V:0.###} V"), [supplies[^1].Id]));
        }

        if (tables.Spots.About(key, reads) is { Count: > 0 } spots)
        {
            var (role, kind) = (Last(spots, spot => spot.Role), Last(spots, spot => spot.Class));
            evidence = evidence with { Role = role, Class = kind };
            if (role is not null) told.Add(new("role", role, Ids(spots)));
            if (kind is not null) told.Add(new("class", kind, Ids(spots)));
        }

        var says = told.Find(each => each.Evidence == "mark")?.Says ?? "";
        var byPeople = all.Select(each => each.Specimen).ToHashSet(StringComparer.Ordinal);
        var elsewhere = all.Concat(machine.Where(each => !byPeople.Contains(each.Specimen))).Where(each => !counting.Counts(each.Specimen)).GroupBy(each => each.Specimen, StringComparer.Ordinal)
            .Select(group => group.Last()).Where(each => each.Value.Written != says).OrderBy(each => each.Specimen, StringComparer.Ordinal);
        return new(
            key, evidence, [.. told], counting.Lead, [.. elsewhere.Select(each => new OtherSpecimen(each.Specimen, each.Value.Written, each.Id, machine.Contains(each)))],
            readings.Count > 0 ? new(readings[^1].Value.Written, readings[^1].Id, made.First(each => each.Id == readings[^1].Id).Value.P, marks.Count == 0) : null);
    }

    /// <summary>Machine readings in which something was read, as the marks they are.</summary>
    private static IReadOnlyList<Sighting<MarkSighting>> Machine(IReadOnlyList<Sighting<ReadingSighting>> readings) =>
        [.. readings.Where(each => each.Value.Mark is not null).Select(each => new Sighting<MarkSighting>(each.Entry, each.Specimen, each.Value.Mark!))];

    private List<ShapeReading> Combs(string key, SpotSpecimens counting, IReads reads)
    {
        var clicked = counting.Of([.. tables.Shapes.About(key, reads).Where(each => each.Value.Shape == ShapeKind.Pitch)]);
        var known = clicked.Select(each => each.Id).ToHashSet();
        return [.. clicked.Select(each => each.Value.What).Distinct(StringComparer.Ordinal).SelectMany(what => reads.Read(shapes, new ShapeKey(key, ShapeKind.Pitch, what)).Readings).Where(comb => known.Contains(comb.Sighting) && !comb.OwnPackage)];
    }

    private SpotSpecimens Counting(string key, IReadOnlyList<Sighting<MarkSighting>> marks, IReads reads)
    {
        static string Newest<T>(IReadOnlyList<Sighting<T>> sightings)
            where T : class => sightings.Count > 0 ? sightings[^1].Specimen : "";
        // A newest mark that names no specimen could be any one's: then nothing is left out, as long as marks are what names it.
        var alike = tables.Alike.About(key, reads);
        if (marks.Count > 0) return SpotSpecimens.Of([Newest(marks)], alike);
        return SpotSpecimens.Of(
            [Newest(tables.Identities.About(key, reads)), Newest(tables.Buses.About(key, reads)), Newest(tables.Pins.About(key, reads)), Newest(tables.Bodies.About(key, reads)), Newest(tables.Pitches.About(key, reads)), Newest(tables.Supplies.About(key, reads))],
            alike);
    }

    private (double A, double B, double U, double? Height, ValueList<EntryId> From)? Body(string spot, SpotSpecimens counting, IReads reads)
    {
        if (counting.Of(tables.Bodies.About(spot, reads)) is { Count: > 0 } bodies)
        {
            var (a, b) = (bodies.Average(each => each.Value.LengthMm), bodies.Average(each => each.Value.WidthMm));
            return (a, b, bodies.Max(each => each.Value.UMm), bodies.Select(each => each.Value.HeightMm).LastOrDefault(height => height is not null), Ids(bodies));
        }

        if (Measured(spot, LongNames, counting, reads) is not { } length || Measured(spot, ShortNames, counting, reads) is not { } width) return null;
        return (length.Value.Mm, width.Value.Mm, Math.Max(length.Value.UMm, width.Value.UMm), null, [.. length.From.Concat(width.From).Distinct().Order()]);
    }

    private (CombinedLength Value, IReadOnlyList<EntryId> From)? Side(string spot, string name, SpotSpecimens counting, IReads reads) => Measured(spot, [name], counting, reads);

    private (CombinedLength Value, IReadOnlyList<EntryId> From)? Measured(string spot, string[] names, SpotSpecimens counting, IReads reads)
    {
        foreach (var name in names)
        {
            var counts = counting.Of(tables.Lengths.About(spot, reads)).Select(each => each.Id).ToHashSet();
            ValueList<LengthReading> readings = [.. reads.Read(lengths, new LengthKey(spot, name)).Readings.Where(reading => counts.Contains(reading.Sighting) && !reading.OwnPackage)];
            if (readings.Count > 0) return (CombinedLength.Of(readings), [.. readings.Select(reading => reading.Sighting)]);
        }

        return null;
    }

    private static MarkLattice Lattice(MarkSighting mark) => new([.. mark.Lines.Select(Line)]);

    private static IReadOnlyList<MarkPosition> Line(MarkLine line)
    {
        if (!line.IsLattice) return MarkLattice.OfText(line.Text).Lines[0];
        return [.. line.Places.Select(place =>
        {
            var chances = place.Top.Where(glyph => glyph.Character.Length == 1).Select(glyph => new GlyphChance(glyph.Character[0], glyph.P)).ToList();
            var nothing = place.Top.Where(glyph => glyph.Character.Length == 0).Sum(glyph => glyph.P);
            return MarkPosition.Of(chances, nothing);
        })];
    }

    private static string? Last(IReadOnlyList<Sighting<SpotSighting>> spots, Func<SpotSighting, string> pick) =>
        spots.Select(spot => pick(spot.Value)).LastOrDefault(text => text.Length > 0);

    private static ValueList<EntryId> Ids<T>(IReadOnlyList<Sighting<T>> sightings)
        where T : class => [.. sightings.Select(each => each.Id).Order()];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
