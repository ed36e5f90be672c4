using System.Text;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// Reads bracketed text: lists in round brackets, bare words, words in quotes with backslash escapes. Written without
/// recursion, so that a file of nothing but open brackets meets a sentence and not the end of the stack.
/// </summary>
internal sealed class ExpressionReader(string text)
{
    private int at;
    private int line = 1;

    /// <summary>The one list that the text holds.</summary>
    public Outcome<Expression> Read()
    {
        var open = new Stack<(int Line, List<Expression> Items)>();
        Expression? whole = null;
        while (SkipBlanks())
        {
            if (whole is not null) return CatalogueSentences.BadExpression(line, "something follows the closing bracket of the file.");
            var mark = text[at];
            if (mark == '(')
            {
                if (open.Count >= ImportLimits.Depth) return CatalogueSentences.TooDeep(line, ImportLimits.Depth);
                open.Push((line, []));
                at++;
            }
            else if (mark == ')')
            {
                if (open.Count == 0) return CatalogueSentences.BadExpression(line, "a bracket closes that was never opened.");
                var (start, items) = open.Pop();
                var list = new Expression(start, null, items);
                if (open.Count > 0) open.Peek().Items.Add(list);
                else whole = list;
                at++;
            }
            else
            {
                if (open.Count == 0) return CatalogueSentences.BadExpression(line, "a word stands outside all brackets.");
                var start = line;
                if (Word() is not { } word) return CatalogueSentences.UnclosedQuote(start);
                open.Peek().Items.Add(new Expression(start, word, []));
            }
        }

        if (open.Count > 0) return CatalogueSentences.BadExpression(open.Peek().Line, "the bracket opened here is never closed; the file may be cut short.");
        return whole is null ? CatalogueSentences.BadExpression(1, "there is no bracket in it.") : whole;
    }

    private bool SkipBlanks()
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            if (text[at] == '\n') line++;
            at++;
        }

        return at < text.Length;
    }

    private string? Word() => text[at] == '"' ? Quoted() : Bare();

    private string Bare()
    {
        var start = at;
        while (at < text.Length && text[at] is not ('(' or ')' or '"') && !char.IsWhiteSpace(text[at])) at++;
        return text[start..at];
    }

    private string? Quoted()
    {
        var word = new StringBuilder();
        for (at++; at < text.Length; at++)
        {
            switch (text[at])
            {
                case '"':
                    at++;
                    return word.ToString();
                case '\\' when at + 1 < text.Length:
                    at++;
                    word.Append(text[at] switch { 'n' => '\n', 't' => '\t', 'r' => '\r', var other => other });
                    break;
                default:
                    if (text[at] == '\n') line++;
                    word.Append(text[at]);
                    break;
            }
        }

        return null;
    }
}
