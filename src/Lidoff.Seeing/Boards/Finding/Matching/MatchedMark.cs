namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>One place of the board in two pictures.</summary>
/// <param name="First">As the first picture shows it.</param>
/// <param name="Second">As the second one does.</param>
/// <param name="RestPx">How far the second lies from where the fitted view puts the first, px of the second picture.</param>
public sealed record MatchedMark(FoundMark First, FoundMark Second, double RestPx);
