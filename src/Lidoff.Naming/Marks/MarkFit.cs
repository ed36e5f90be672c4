using Lidoff.Numbers.Typed;

namespace Lidoff.Naming.Marks;

/// <summary>What of a form a reading holds, for the sentence beside the odds; the odds themselves come of the mark model.</summary>
/// <param name="Kind">All of it or some.</param>
/// <param name="Have">How many of its characters are there, in order.</param>
/// <param name="Total">How many it has.</param>
public readonly record struct MarkFit(MarkFitKind Kind, int Have, int Total)
{
    /// <summary>Of a reading as <see cref="MarkLattice.Best"/> writes it: unread places fit anything, look-alikes each other.</summary>
    internal static MarkFit Of(string read, MarkForm form)
    {
        var lines = read.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var whole = string.Join('/', lines);
        var literals = form.Literals;
        // A pattern of several lines is held against all of them, one of one line against each.
        string[] held = form.Glyphs.Contains(MarkForm.Line) ? [whole] : lines;
        if (Array.Exists(held, line => Fits(form.Glyphs, 0, line, 0, form.OpenEnd))) return new(MarkFitKind.Whole, literals, literals);
        if (Array.Exists(held, line => Fits(form.Glyphs, 0, line, 0, true))) return new(MarkFitKind.Begins, literals, literals);
        if (Array.Exists(held, line => Enumerable.Range(1, line.Length).Any(at => Fits(form.Glyphs, 0, line, at, true)))) return new(MarkFitKind.Holds, literals, literals);
        return new(MarkFitKind.Part, held.Select(line => Common(form.Glyphs, line)).DefaultIfEmpty(0).Max(), literals);
    }

    private static bool Fits(sbyte[] form, int i, string line, int j, bool open)
    {
        if (i == form.Length) return open || j == line.Length;
        if (form[i] == MarkForm.Many) return Enumerable.Range(j, line.Length - j + 1).Any(at => Fits(form, i + 1, line, at, open));
        if (j >= line.Length) return false;
        if (line[j] == '*') return Enumerable.Range(i, form.Length - i + 1).Any(at => Fits(form, at, line, j + 1, open));
        return Same(form[i], line[j]) && Fits(form, i + 1, line, j + 1, open);
    }

    private static bool Same(sbyte glyph, char read) => glyph switch
    {
        MarkForm.Line => read == '/',
        MarkForm.One => read != '/',
        _ => read == '?' || Glyphs.Char(glyph) == char.ToUpperInvariant(read) || LookAlikes.Alike(Glyphs.Char(glyph), char.ToUpperInvariant(read)),
    };

    /// <summary>How many of the form's characters stand in the line in their order, others between them.</summary>
    private static int Common(sbyte[] form, string line)
    {
        var best = new int[line.Length + 1];
        foreach (var glyph in form.Where(glyph => glyph < MarkForm.One))
        {
            for (var (j, corner) = (0, 0); j < line.Length; j++)
            {
                var above = best[j + 1];
                best[j + 1] = line[j] is not ('?' or '*') && Same(glyph, line[j]) ? corner + 1 : Math.Max(above, best[j]);
                corner = above;
            }
        }

        return best[line.Length];
    }
}
