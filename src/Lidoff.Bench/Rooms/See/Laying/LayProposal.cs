using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>What a machine found between this picture and another.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Other">The other picture's hash.</param>
/// <param name="OtherName">Its name; hostile text.</param>
/// <param name="Width">The other's upright width, px.</param>
/// <param name="Height">Its upright height, px.</param>
/// <param name="Summary">How well they agree, one sentence.</param>
/// <param name="Says">What else was said.</param>
/// <param name="Pairs">The landmarks proposed.</param>
/// <param name="Lines">For each of them the lines that take it over; none where it is taken over.</param>
public sealed record LayProposal(
    EntryId Entry, string Other, string OtherName, int Width, int Height, string Summary, ValueList<string> Says, ValueList<LayPair> Pairs, ValueList<LayLines> Lines);
