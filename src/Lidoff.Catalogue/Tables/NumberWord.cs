using System.Globalization;

namespace Lidoff.Catalogue.Tables;

/// <summary>Reads one number of a table, with a decimal point or, where the table uses commas for decimals, a comma.</summary>
public static class NumberWord
{
    /// <summary>Reads <paramref name="text"/>; <paramref name="comma"/> true: comma is the decimal mark; null: nobody said, so a lone comma is decided by what follows it.</summary>
    public static NumberVerdict Read(string text, bool? comma, out double value)
    {
        value = 0;
        var word = text.Trim();
        if (word.Length == 0) return NumberVerdict.Empty;
        var mark = word.IndexOf(',', StringComparison.Ordinal);
        if (mark >= 0)
        {
            if (comma == false || word.Contains('.', StringComparison.Ordinal) || word.IndexOf(',', mark + 1) >= 0) return NumberVerdict.Not;
            // "1,000": a thousand to one reader, one to another. "0,500" cannot be thousands.
            if (comma is null && word.Length - mark - 1 == 3 && mark is > 0 and <= 3 && word[0] != '0') return NumberVerdict.Ambiguous;
            word = word.Replace(',', '.');
        }
        else if (comma == true && word.Contains('.', StringComparison.Ordinal))
        {
            return NumberVerdict.Not;
        }

        return double.TryParse(word, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value) ? NumberVerdict.Number : NumberVerdict.Not;
    }
}
