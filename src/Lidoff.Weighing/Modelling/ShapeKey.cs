using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Modelling;

/// <summary>Which shape: of which spot, what sort, and which of that spot's.</summary>
public readonly record struct ShapeKey(string Spot, ShapeKind Shape, string What);
