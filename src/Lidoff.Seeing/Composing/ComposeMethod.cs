namespace Lidoff.Seeing.Composing;

/// <summary>How pictures become one.</summary>
public enum ComposeMethod
{
    /// <summary>One place, the focus moved between the pictures: sharp everywhere, and how high each place is.</summary>
    Stack,

    /// <summary>Neighbouring pieces of one flat board.</summary>
    Stitch,

    /// <summary>One place, lit low from several directions: relief, and marks at their best.</summary>
    Lights,

    /// <summary>The same picture many times: noise goes down as the root of their number.</summary>
    Average,
}
