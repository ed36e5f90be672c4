using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>The symbols a reader knows, in the order of its classes; class 0 is the blank, so symbol <c>i</c> is class <c>i + 1</c>.</summary>
public sealed class ReadingAlphabet
{
    private readonly Dictionary<char, int> classes = [];

    /// <summary>An alphabet of different symbols, one at least.</summary>
    public ReadingAlphabet(string symbols)
    {
        Guard.That(Guard.NotNull(symbols).Length > 0, "one symbol at least");
        Symbols = symbols;
        for (var i = 0; i < symbols.Length; i++) Guard.That(classes.TryAdd(symbols[i], i + 1), "each symbol once");
    }

    /// <summary>The alphabet of marks: digits, capitals and the four signs that are printed on parts.</summary>
    public static ReadingAlphabet OfMarks { get; } = new("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-./+");

    /// <summary>The symbols.</summary>
    public string Symbols { get; }

    /// <summary>Classes of a reader with this alphabet, the blank included.</summary>
    public int Classes => Symbols.Length + 1;

    /// <summary>The symbol of a class from 1 on.</summary>
    public char Symbol(int symbolClass) => Symbols[symbolClass - 1];

    /// <summary>The classes of a text; null where it holds a symbol that the alphabet lacks.</summary>
    public int[]? ClassesOf(string text)
    {
        var found = new int[Guard.NotNull(text).Length];
        for (var i = 0; i < text.Length; i++)
        {
            if (!classes.TryGetValue(text[i], out found[i])) return null;
        }

        return found;
    }
}
