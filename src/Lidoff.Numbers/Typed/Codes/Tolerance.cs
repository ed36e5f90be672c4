using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>A tolerance as a letter tells it: how far below and above, both zero or more, in per cent or picofarad.</summary>
public sealed record Tolerance(double Below, double Above, Unit Unit);
