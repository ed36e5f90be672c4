namespace Lidoff.Naming.Marks;

/// <summary>A form as people write it.</summary>
internal static class MarkText
{
    internal static string Of(MarkForm form) => new([.. form.Glyphs.Select(g => g switch { MarkForm.One => '?', MarkForm.Many => '*', MarkForm.Line => '/', _ => Glyphs.Char(g) })]);
}
