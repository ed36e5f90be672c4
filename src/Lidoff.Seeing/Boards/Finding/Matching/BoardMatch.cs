using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>How a second picture lies on a first one, as found out by a machine. A proposal: a person confirms it.</summary>
/// <param name="Mirrored">True when left and right swap between the two: two sides of a board, or one picture flipped.</param>
/// <param name="TurnDegrees">How far the second is turned against the first, clockwise, −180 to 180; of a mirrored one after it was flipped about its upright axis.</param>
/// <param name="Map">From places of the first picture to places of the second, px.</param>
/// <param name="Pairs">What agrees, those that stand out most first.</param>
/// <param name="Of">How many could have agreed: marks of one picture that the other one should show, of the fewer.</param>
/// <param name="RestPx">Root mean square of what is left, px of the second picture.</param>
/// <param name="ByChance">How many marks would agree by accident, on average.</param>
/// <param name="LogOdds">Natural logarithm of how many matches as good as this one chance would give among all that were tried; far below 0 for a true one.</param>
/// <param name="Likeness">How alike the pixels of both are once laid on one another, −1 to 1: near 0 for two sides, higher for two pictures of one side.</param>
/// <param name="Says">What to know: a mirrored or turned picture.</param>
public sealed record BoardMatch(
    bool Mirrored, double TurnDegrees, Projective Map, ValueList<MatchedMark> Pairs, int Of, double RestPx, double ByChance, double LogOdds, double Likeness, ValueList<string> Says);
