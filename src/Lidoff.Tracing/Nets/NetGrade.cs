namespace Lidoff.Tracing.Nets;

/// <summary>How it is known that points are one net; the best of what joins them.</summary>
public enum NetGrade
{
    /// <summary>A person drew it.</summary>
    ByHand,

    /// <summary>Touches or counted pins join every point of it.</summary>
    Touched,
}
