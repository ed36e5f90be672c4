using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Tests.Entries;

public sealed class ValueListTests
{
    [Fact]
    public void Records_with_equal_lists_are_equal()
    {
        Assert.Equal(new Row("a", ["x", "y"]), new Row("a", ["x", "y"]));
        Assert.Equal(new Row("a", ["x", "y"]).GetHashCode(), new Row("a", ["x", "y"]).GetHashCode());
        Assert.NotEqual(new Row("a", ["x", "y"]), new Row("a", ["y", "x"]));
        Assert.NotEqual(new Row("a", ["x", "y"]), new Row("a", ["x"]));
    }

    private sealed record Row(string Name, ValueList<string> Items);
}
