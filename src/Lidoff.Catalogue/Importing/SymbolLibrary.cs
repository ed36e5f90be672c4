using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// Reads parts from a symbol library in the open bracketed format that electronics design tools share: names, what a symbol
/// extends, pins with electrical types, the footprint or the footprint filter, the description. Drawn power signs and
/// symbols without pins are passed over with a note.
/// </summary>
internal static class SymbolLibrary
{
    public static void Read(string text, Gathering into)
    {
        var read = new ExpressionReader(text).Read();
        if (!read.TryValue(out var library))
        {
            foreach (var fault in read.Faults) into.Add(fault);
            return;
        }

        if (!library.Head.EndsWith("_symbol_lib", StringComparison.Ordinal))
        {
            into.Add(CatalogueSentences.UnknownKind(into.FileName));
            return;
        }

        var symbols = new Dictionary<string, Expression>(StringComparer.Ordinal);
        foreach (var symbol in library.Lists("symbol"))
        {
            if (!symbols.TryAdd(symbol.At(1), symbol)) into.Add(CatalogueSentences.DoubledRow(symbol.Line, symbols[symbol.At(1)].Line));
        }

        var reader = new RowReader(into.FileName, decimalComma: false);
        foreach (var symbol in symbols.Values)
        {
            if (into.Full)
            {
                into.AddTooMany();
                return;
            }

            if (symbol.Lists("power").Any() || Ancestry(symbol, symbols, into) is not { } chain) continue;
            var cells = Cells(symbol, chain);
            if (cells["pinout"].Length == 0) into.Note(CatalogueSentences.NoPins(into.FileName, symbol.At(1)));
            else into.Add(reader.Read(symbol.Line, name => cells.GetValueOrDefault(name, "")));
        }
    }

    // The symbol and what it extends, nearest first.
    private static List<Expression>? Ancestry(Expression symbol, Dictionary<string, Expression> symbols, Gathering into)
    {
        var chain = new List<Expression> { symbol };
        while (chain[^1].Lists("extends").FirstOrDefault() is { } extends)
        {
            if (!symbols.TryGetValue(extends.At(1), out var parent))
            {
                into.Add(CatalogueSentences.UnknownParent(symbol.Line, symbol.At(1), extends.At(1)));
                return null;
            }

            if (chain.Contains(parent))
            {
                into.Add(CatalogueSentences.CircularParent(symbol.Line, symbol.At(1)));
                return null;
            }

            chain.Add(parent);
        }

        return chain;
    }

    private static Dictionary<string, string> Cells(Expression symbol, List<Expression> chain)
    {
        var pins = Pins(chain[^1]);
        return new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["part"] = symbol.At(1),
            ["maker"] = Property(chain, "Manufacturer", "MANUFACTURER", "Manufacturer_Name"),
            ["class"] = Property(chain, "ki_description", "Description"),
            ["package"] = Package(chain),
            ["pinout"] = string.Join(';', pins.Select(p => $"{p.Number}={p.Name}:{p.Type}")),
            ["source"] = Property(chain, "Datasheet") is { Length: > 1 } sheet ? sheet : "symbol library",
            // Volunteers drew it from a data sheet.
            ["confidence"] = "derived",
        };
    }

    private static string Package(List<Expression> chain)
    {
        var footprint = Property(chain, "Footprint");
        var colon = footprint.IndexOf(':', StringComparison.Ordinal);
        if (footprint.Length > colon + 1) return footprint[(colon + 1)..];
        // A filter is a pattern over footprint names; of several only the first is taken, its wildcards cut off.
        var filter = Property(chain, "ki_fp_filters").Split(' ', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() ?? "";
        colon = filter.IndexOf(':', StringComparison.Ordinal);
        return filter[(colon + 1)..].Replace("?", "-", StringComparison.Ordinal).Replace("*", " ", StringComparison.Ordinal).Trim();
    }

    private static string Property(List<Expression> chain, params ReadOnlySpan<string> names)
    {
        foreach (var link in chain)
        {
            foreach (var property in link.Lists("property"))
            {
                if (names.Contains(property.At(1)) && property.At(2).Trim() is { Length: > 0 } value && value != "~") return value;
            }
        }

        return "";
    }

    // Pins stand in the unit symbols within; a part of several units has each pin once a drawing style.
    private static List<(string Number, string Name, string Type)> Pins(Expression symbol)
    {
        var pins = new List<(string Number, string Name, string Type)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var pin in symbol.Lists("symbol").SelectMany(unit => unit.Lists("pin")).Concat(symbol.Lists("pin")))
        {
            var number = Clean(pin.Lists("number").FirstOrDefault()?.At(1) ?? "");
            var name = Clean(pin.Lists("name").FirstOrDefault()?.At(1) ?? "");
            if (number.Length > 0 && seen.Add(number)) pins.Add((number, name, Clean(pin.At(1))));
        }

        return pins;
    }

    // Signs that part pins in the pin-out text cannot stand in a name; they never do in real libraries.
    private static string Clean(string word) => word.Replace(';', ' ').Replace('=', ' ').Trim();
}
