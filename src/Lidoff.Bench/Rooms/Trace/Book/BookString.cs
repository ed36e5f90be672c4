namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>A touch as a string between its points. Where the second point lies in neither picture it is a tag beside the first.</summary>
/// <param name="A">One point.</param>
/// <param name="B">The other.</param>
/// <param name="Reading">What the meter showed, in words.</param>
/// <param name="Kind">Its stroke.</param>
/// <param name="X1">Units; the placed end.</param>
/// <param name="Y1">Units.</param>
/// <param name="X2">Units; the other end.</param>
/// <param name="Y2">Units.</param>
/// <param name="Tag">Name at the loose end; empty where both ends are placed.</param>
/// <param name="Row">How many touches between the same points came before it; their words stand under each other.</param>
public sealed record BookString(string A, string B, string Reading, StringKind Kind, double X1, double Y1, double X2, double Y2, string Tag, int Row);
