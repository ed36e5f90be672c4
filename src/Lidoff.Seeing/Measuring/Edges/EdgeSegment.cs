namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A straight piece of an edge: its middle, the direction along it (radians), its length and how far its middle stands off the line through its ends, px.</summary>
internal readonly record struct EdgeSegment(double X, double Y, double Angle, double Length, double Sagitta);
