using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed;

/// <summary>Decides which of the marks in a digit run is the decimal mark, or asks.</summary>
internal static class DecimalMarks
{
    /// <summary>The digits with a point, and the mark that this run proves.</summary>
    public sealed record Resolved(string Digits, DecimalMark? Settles);

    /// <summary>
    /// Rules, in order: the Arabic decimal mark is one; of two kinds of mark the last is the decimal mark and the other parts groups
    /// of three; one kind that occurs twice parts groups; a single mark before exactly three digits, behind one to three digits of
    /// which the first is not 0, can be either and is asked about unless <paramref name="mark"/> settles it.
    /// </summary>
    public static Outcome<Resolved> Resolve(string run, DecimalMark mark, string where, bool scientific)
    {
        if (run.EndsWith('.')) run = run[..^1];
        var points = run.Count(c => c == '.');
        var commas = run.Count(c => c == ',');
        var arabic = run.Count(c => c == '\u066B');
        if (arabic > 0) return arabic == 1 && points + commas == 0 ? Decimal(run, '\u066B', null, null, where) : TypedSentences.MixedMarks(where, run);
        if (points == 0 && commas == 0) return Decimal(run, null, null, null, where);
        if (points > 0 && commas > 0)
        {
            var last = run.LastIndexOf('.') > run.LastIndexOf(',') ? '.' : ',';
            return Decimal(run, last, last == '.' ? ',' : '.', Proof(last), where);
        }

        var only = points > 0 ? '.' : ',';
        if (points + commas > 1) return Decimal(run, null, only, Proof(only == '.' ? ',' : '.'), where);
        if (!CouldPartThousands(run, only) || scientific) return Decimal(run, only, null, Proof(only), where);
        return mark switch
        {
            DecimalMark.Point => only == '.' ? Decimal(run, '.', null, null, where) : Decimal(run, null, ',', null, where),
            DecimalMark.Comma => only == ',' ? Decimal(run, ',', null, null, where) : Decimal(run, null, '.', null, where),
            DecimalMark.Machine when only == '.' => Decimal(run, '.', null, null, where),
            _ => TypedSentences.TwoReadings(where, run, run.Replace(only, '.'), run.Replace(only.ToString(), "", StringComparison.Ordinal)),
        };
    }

    private static DecimalMark Proof(char mark) => mark == '.' ? DecimalMark.Point : DecimalMark.Comma;

    private static bool CouldPartThousands(string run, char mark)
    {
        var at = run.IndexOf(mark);
        return at is >= 1 and <= 3 && run[0] != '0' && run.Length - at - 1 == 3 && run[..at].All(char.IsAsciiDigit) && run[(at + 1)..].All(char.IsAsciiDigit);
    }

    private static Outcome<Resolved> Decimal(string run, char? mark, char? group, DecimalMark? settles, string where)
    {
        var at = mark is { } m ? run.IndexOf(m) : run.Length;
        var whole = run[..at];
        var fraction = at < run.Length ? run[(at + 1)..] : "";
        if (mark is { } again && fraction.Contains(again)) return TypedSentences.MixedMarks(where, run);
        if (group is { } g && fraction.Contains(g)) return TypedSentences.MixedMarks(where, run);
        char[] separators = group is { } typed ? [typed, ' ', '\'', '_'] : [' ', '\'', '_'];
        var groups = whole.Split(separators);
        if (groups.Length > 1 && (groups[0].Length is 0 or > 3 || groups.Skip(1).Any(part => part.Length != 3))) return TypedSentences.BadGroups(where, run);
        if (whole.Where(c => separators.Contains(c)).Distinct().Count() > 1) return TypedSentences.MixedMarks(where, run);
        var digits = string.Concat(groups);
        var decimals = string.Concat(fraction.Split(' ', '\'', '_'));
        return new Resolved((digits.Length == 0 ? "0" : digits) + (decimals.Length == 0 ? "" : "." + decimals), settles);
    }
}
