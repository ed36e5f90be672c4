using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Reckon.Tree;

/// <summary>One input of a number.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Says">What it is.</param>
/// <param name="Value">What was taken for it, with its doubt.</param>
/// <param name="Bound">How it came: "typed", "assumed", or the reference.</param>
/// <param name="Reckoning">Designator of the number it comes from; empty where it comes from something else.</param>
/// <param name="Grade">How well it is known, "E2".</param>
/// <param name="Share">Part of the number's variance, 0..1; null where nothing is known of it.</param>
/// <param name="Sightings">What it rests on.</param>
public sealed record InputRow(string Key, string Says, string Value, string Bound, string Reckoning, string Grade, double? Share, ValueList<SightingRow> Sightings);
