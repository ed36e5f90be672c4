using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Opening.Resuming;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Weighing.Moves;

/// <summary>Moves that no question of the board has to ask for: undecided spots, pictures without scale, steps that destroy, quarrels.</summary>
internal static class GeneralMoves
{
    // What a catalogue can name; a glue bead or a seam has no part number.
    private static readonly HashSet<string> Nameable = new(["chip", "module", "sensor", "transistor"], StringComparer.Ordinal);

    public static IEnumerable<NextMove> Of(MoveBench bench) => Plans(bench).Concat(Quarrels(bench)).Concat(Pictures(bench)).Concat(Spots(bench)).Concat(Unplaced(bench));

    private static IEnumerable<NextMove> Plans(MoveBench bench)
    {
        foreach (var step in PlanBook.Of(bench.View, bench.Model.Has).Where(step => step.State != PlanState.Done && step.Plan.Irreversible))
        {
            var finder = new MoveFinder(bench, MoveSentences.Before(step.Plan.Plan, step.Plan.Does));
            foreach (var what in step.NotRecorded) finder.Add(MoveSentences.Record(what), MoveMinutes.Record, MoveSentences.Destroys(step.Plan.Plan, step.Plan.Destroys), "plan:" + step.Plan.Plan);
            foreach (var move in finder.Found) yield return move;
        }
    }

    private static IEnumerable<NextMove> Quarrels(MoveBench bench)
    {
        foreach (var quarrel in bench.Quarrels)
        {
            var finder = new MoveFinder(bench, MoveSentences.Which(quarrel.Rule));
            finder.Add(quarrel.Settle, quarrel.Minutes, quarrel.Say, "entry:" + quarrel.Members[0].Hex);
            foreach (var move in finder.Found) yield return move;
        }
    }

    private static IEnumerable<NextMove> Pictures(MoveBench bench)
    {
        var placed = bench.View.Live<SpotSighting>().Where(spot => spot.Value.Picture.Length > 0)
            .Select(spot => (Picture: bench.Model.Picture(spot.Value.Picture), spot.Value.Spot)).Where(pair => pair.Picture.Found)
            .GroupBy(pair => pair.Picture.Sha256, StringComparer.Ordinal).OrderBy(group => group.First().Picture.Name, NaturalOrder.Instance).ThenBy(group => group.Key, StringComparer.Ordinal);
        foreach (var group in placed.Where(group => !bench.Model.Measures(group.Key)))
        {
            var name = group.First().Picture.Name;
            var finder = new MoveFinder(bench, MoveSentences.HowLarge(name));
            finder.Add(MoveSentences.SetScale(name), MoveMinutes.Scale, MoveSentences.SpotsWithoutScale(name, group.Select(pair => pair.Spot).Distinct(StringComparer.Ordinal).Count()), "picture:" + group.Key);
            yield return finder.Found[0];
        }
    }

    private static IEnumerable<NextMove> Spots(MoveBench bench)
    {
        var classes = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var spot in bench.View.Live<SpotSighting>())
        {
            if (spot.Value.Class.Length > 0 || !classes.ContainsKey(spot.Value.Spot)) classes[spot.Value.Spot] = spot.Value.Class;
        }

        foreach (var mark in bench.View.Live<MarkSighting>()) classes.TryAdd(mark.Value.Spot, "");
        foreach (var reading in bench.View.Live<ReadingSighting>()) classes.TryAdd(reading.Value.Spot, "");
        foreach (var (spot, kind) in classes.OrderBy(pair => pair.Key, NaturalOrder.Instance).ThenBy(pair => pair.Key, StringComparer.Ordinal))
        {
            if (!Nameable.Contains(kind) && !bench.Model.Identity(spot).Asked) continue;
            var finder = new MoveFinder(bench, MoveSentences.WhatIs(spot));
            finder.Part(spot);
            foreach (var move in finder.Found) yield return move;
        }
    }

    /// <summary>Spots that touches, rails, buses and supplies speak of and nobody has pointed at.</summary>
    private static IEnumerable<NextMove> Unplaced(MoveBench bench)
    {
        var view = bench.View;
        var known = view.Live<SpotSighting>().Select(spot => spot.Value.Spot).ToHashSet(StringComparer.Ordinal);
        var spoken = view.Live<TouchSighting>().SelectMany(touch => new[] { touch.Value.A.Spot, touch.Value.B.Spot })
            .Concat(view.Newest<RailDrawn>(rail => rail.Rail).Where(rail => !rail.Value.Dropped).SelectMany(rail => rail.Value.To.Append(rail.Value.From)))
            .Concat(view.Live<BusSighting>().Select(bus => bus.Value.Spot))
            .Concat(view.Live<SupplySighting>().Select(supply => supply.Value.Spot))
            .Concat(view.Live<CellSighting>().Select(cell => cell.Value.Spot))
            .Where(spot => spot.Length > 0 && !known.Contains(spot)).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance);
        foreach (var spot in spoken)
        {
            var finder = new MoveFinder(bench, MoveSentences.WhatIs(spot));
            finder.Add(MoveSentences.PointAt(spot), MoveMinutes.Point, MoveSentences.Nowhere(spot), "spot:" + spot);
            yield return finder.Found[0];
        }
    }
}
