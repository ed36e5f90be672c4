using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Indexing;

/// <summary>Reads what <see cref="PartsWriter"/> wrote. The caller has checked the hash, so the content is trusted.</summary>
internal sealed class PartsReader(BinaryReader source)
{
    private string[] texts = [];
    private Pin[] pins = [];
    private Pin[][] pinLists = [];

    public IReadOnlyList<Part> Read()
    {
        texts = List(source.ReadString);
        pins = List(() => new Pin(Text(), Text(), Text()));
        pinLists = List(() => List(() => pins[Int()]));
        return List(Part);
    }

    private Part Part() => new()
    {
        Name = Text(),
        OrderCodes = List(Text),
        Maker = Text(),
        OtherMakers = List(Text),
        Class = Text(),
        Classes = List(Text),
        Kind = Text(),
        Packages = List(Package),
        Marks = List(Mark),
        BusAddresses = List(() => (int)source.ReadByte()),
        ExampleAddresses = List(() => (int)source.ReadByte()),
        Identity = List(Identity),
        Interface = Text(),
        PinLists = List(Pinout),
        SupplyLeast = Real(),
        SupplyMost = Real(),
        IdleCurrent = Real(),
        ActiveCurrent = Real(),
        Price = Text(),
        Introduced = Count(),
        Confidence = (Confidence)source.ReadByte(),
        Sources = List(Text),
        Rows = List(() => new RowOrigin(Text(), Int())),
    };

    private PackageFact Package() => new(Text(), Text(), Real(), Real(), Real(), Real(), Count())
    {
        OrderCodes = List(Text),
        Confidence = (Confidence)source.ReadByte(),
    };

    private MarkPattern Mark() => new(Text(), (Confidence)source.ReadByte(), Text()) { OrderCodes = List(Text) };

    private IdentityRegister Identity()
    {
        var register = source.ReadInt32();
        var value = source.ReadInt64();
        var mask = source.ReadInt64();
        return new IdentityRegister(register, value, (Confidence)source.ReadByte()) { Mask = mask };
    }

    private PinList Pinout()
    {
        var package = Text();
        var codes = List(Text);
        var said = Text();
        return new PinList(package, codes, pinLists[Int()], said);
    }

    private T[] List<T>(Func<T> item)
    {
        var count = Int();
        if (count == 0) return [];
        var list = new T[count];
        for (var i = 0; i < list.Length; i++) list[i] = item();
        return list;
    }

    private int Int() => source.Read7BitEncodedInt();

    private int? Count() => Int() is var value and > 0 ? value : null;

    private string Text() => texts[Int()];

    private double? Real() => source.ReadDouble() is var value && double.IsNaN(value) ? null : value;
}
