namespace Lidoff.Reckoning.Reckon;

/// <summary>One <c>key=value</c> as somebody typed it; the same key may come twice, which is then a fault.</summary>
public sealed record TypedInput(string Key, string Text);
