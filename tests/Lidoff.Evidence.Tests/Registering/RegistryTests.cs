using Lidoff.Evidence.Registering;

namespace Lidoff.Evidence.Tests.Registering;

public interface IFruit : INamed;

public interface ITwin : INamed;

public sealed class Pear : IFruit
{
    public string Name => "pear";
}

public sealed class Apple : IFruit
{
    public string Name => "apple";
}

public sealed class Zest : IFruit
{
    public string Name => "Zest";
}

public abstract class Citrus : IFruit
{
    public abstract string Name { get; }
}

public class Unsealed : IFruit
{
    public string Name => "unsealed";
}

public sealed class NeedsMore(string name) : IFruit
{
    public string Name => name;
}

public sealed class TwinA : ITwin
{
    public string Name => "twin";
}

public sealed class TwinB : ITwin
{
    public string Name => "twin";
}

public sealed class RegistryTests
{
    [Fact]
    public void Items_are_found_by_type_in_ordinal_order_of_their_names()
    {
        var registry = Registry.Of<IFruit>(typeof(RegistryTests).Assembly, typeof(RegistryTests).Assembly);
        Assert.Equal(["Zest", "apple", "pear"], registry.Items.Select(f => f.Name));
        Assert.True(registry.TryFind("pear", out var pear));
        Assert.IsType<Pear>(pear);
        Assert.False(registry.TryFind("PEAR", out _));
    }

    [Fact]
    public void Two_of_one_name_throw() =>
        Assert.Contains("one ITwin under the name 'twin'", Assert.Throws<ArgumentException>(() => Registry.Of<ITwin>(typeof(RegistryTests).Assembly)).Message, StringComparison.Ordinal);

    [Fact]
    public void What_would_be_overlooked_is_listed() =>
        Assert.Equal([typeof(NeedsMore), typeof(Unsealed)], Registry.NearMisses<IFruit>(typeof(RegistryTests).Assembly));

    [Fact]
    public void No_recogniser_is_overlooked() =>
        Assert.Empty(Registry.NearMisses<IFileRecogniser>(typeof(IFileRecogniser).Assembly));
}
