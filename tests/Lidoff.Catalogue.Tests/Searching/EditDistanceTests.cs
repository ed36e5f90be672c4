using CsCheck;
using Lidoff.Catalogue.Searching;

namespace Lidoff.Catalogue.Tests.Searching;

public sealed class EditDistanceTests
{
    // Oracle: try every single substitution, deletion and insertion outright.
    [Fact]
    public void Within_one_edit_agrees_with_trying_them_all()
    {
        var word = Gen.Char["AB1"].Array[2, 6].Select(c => new string(c));
        Gen.Select(word, Gen.Char["AB1"].Array[0, 9].Select(c => new string(c))).Sample(
            (pattern, text) => EditDistance.WithinOne(pattern, text) == AllEdits(pattern).Any(e => text.Contains(e, StringComparison.Ordinal)), iter: 2000);
    }

    // Textbook examples of the Levenshtein distance (from memory).
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("saturday", "sunday", 3)]
    [InlineData("flaw", "lawn", 2)]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "", 3)]
    [InlineData("N52832", "N52832", 0)]
    public void Edits_between_texts_are_counted(string one, string other, int edits) => Assert.Equal(edits, EditDistance.Of(one, other));

    // The same oracle: what single edits reach lies within one edit, and nothing else does.
    [Fact]
    public void One_edit_is_what_trying_them_all_reaches()
    {
        var word = Gen.Char["AB1"].Array[0, 5].Select(c => new string(c));
        Gen.Select(word, word).Sample((one, other) => (EditDistance.Of(one, other) <= 1) == AllEdits(one).Contains(other, StringComparer.Ordinal), iter: 2000);
    }

    [Theory]
    [InlineData("A?C*", "ABC", true)]
    [InlineData("A?C*", "ABCDEF", true)]
    [InlineData("A?C", "AC", false)]
    [InlineData("*", "", true)]
    [InlineData("?", "", false)]
    [InlineData("*B*B*", "ABCB", true)]
    [InlineData("*B*B*", "ABC", false)]
    public void Wildcards_cover(string pattern, string text, bool covers) => Assert.Equal(covers, Wildcard.Covers(pattern, text));

    private static IEnumerable<string> AllEdits(string pattern)
    {
        yield return pattern;
        for (var i = 0; i <= pattern.Length; i++)
        {
            foreach (var mark in "AB1")
            {
                yield return pattern.Insert(i, mark.ToString());
                if (i < pattern.Length) yield return string.Concat(pattern.AsSpan(0, i), mark.ToString(), pattern.AsSpan(i + 1));
            }

            if (i < pattern.Length) yield return pattern.Remove(i, 1);
        }
    }
}
