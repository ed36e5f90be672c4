using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Dates;

/// <summary>
/// A code as written with every reading of it, likeliest first. <paramref name="Remarks"/> are sentences for people (a week 00, the
/// shape of a part number); <paramref name="Fault"/> is there when nothing could be read of it.
/// </summary>
public sealed record DateCode(string Code, IReadOnlyList<DateReading> Readings, IReadOnlyList<string> Remarks, Fault? Fault);
