using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Indexing;

/// <summary>Writes parts in the order that <see cref="PartsReader"/> reads them.</summary>
internal sealed class PartsWriter(BinaryWriter target)
{
    private readonly Dictionary<string, int> texts = new(StringComparer.Ordinal);
    private readonly Dictionary<Pin, int> pins = [];
    private readonly Dictionary<string, int> pinouts = new(StringComparer.Ordinal);
    private readonly List<IReadOnlyList<Pin>> pinLists = [];

    public void Write(IReadOnlyList<Part> parts)
    {
        // The parts go to a side buffer first: only then are all texts and pin-outs known.
        var side = new MemoryStream();
        using (var writer = new BinaryWriter(side, System.Text.Encoding.UTF8, leaveOpen: true))
        {
            writer.Write7BitEncodedInt(parts.Count);
            foreach (var part in parts) Put(writer, part);
        }

        var lists = new MemoryStream();
        using (var writer = new BinaryWriter(lists, System.Text.Encoding.UTF8, leaveOpen: true))
        {
            writer.Write7BitEncodedInt(pinLists.Count);
            foreach (var list in pinLists) Put(writer, list, (w, pin) => w.Write7BitEncodedInt(Number(pins, pin)));
        }

        var singles = new MemoryStream();
        using (var writer = new BinaryWriter(singles, System.Text.Encoding.UTF8, leaveOpen: true))
        {
            writer.Write7BitEncodedInt(pins.Count);
            foreach (var pin in pins.OrderBy(p => p.Value).Select(p => p.Key))
            {
                Put(writer, pin.Number);
                Put(writer, pin.Name);
                Put(writer, pin.Type);
            }
        }

        target.Write7BitEncodedInt(texts.Count);
        foreach (var text in texts.OrderBy(t => t.Value)) target.Write(text.Key);
        target.Write(singles.ToArray());
        target.Write(lists.ToArray());
        target.Write(side.ToArray());
    }

    private void Put(BinaryWriter w, Part part)
    {
        Put(w, part.Name);
        Put(w, part.OrderCodes, Put);
        Put(w, part.Maker);
        Put(w, part.OtherMakers, Put);
        Put(w, part.Class);
        Put(w, part.Classes, Put);
        Put(w, part.Kind);
        Put(w, part.Packages, Put);
        Put(w, part.Marks, Put);
        Put(w, part.BusAddresses, (x, address) => x.Write((byte)address));
        Put(w, part.ExampleAddresses, (x, address) => x.Write((byte)address));
        Put(w, part.Identity, Put);
        Put(w, part.Interface);
        Put(w, part.PinLists, Put);
        Put(w, part.SupplyLeast);
        Put(w, part.SupplyMost);
        Put(w, part.IdleCurrent);
        Put(w, part.ActiveCurrent);
        Put(w, part.Price);
        w.Write7BitEncodedInt(part.Introduced ?? 0);
        w.Write((byte)part.Confidence);
        Put(w, part.Sources, Put);
        Put(w, part.Rows, Put);
    }

    private void Put(BinaryWriter w, PackageFact fact)
    {
        Put(w, fact.Name);
        Put(w, fact.Family);
        Put(w, fact.LengthMm);
        Put(w, fact.WidthMm);
        Put(w, fact.HeightMm);
        Put(w, fact.PitchMm);
        w.Write7BitEncodedInt(fact.Pins ?? 0);
        Put(w, fact.OrderCodes, Put);
        w.Write((byte)fact.Confidence);
    }

    private void Put(BinaryWriter w, MarkPattern mark)
    {
        Put(w, mark.Pattern);
        w.Write((byte)mark.Confidence);
        Put(w, mark.Source);
        Put(w, mark.OrderCodes, Put);
    }

    private static void Put(BinaryWriter w, IdentityRegister identity)
    {
        w.Write(identity.Register);
        w.Write(identity.Value);
        w.Write(identity.Mask);
        w.Write((byte)identity.Confidence);
    }

    private void Put(BinaryWriter w, PinList list)
    {
        Put(w, list.Package);
        Put(w, list.OrderCodes, Put);
        Put(w, list.Source);
        var text = PinoutText.Write(list.Pins);
        if (!pinouts.TryGetValue(text, out var number))
        {
            pinouts.Add(text, number = pinLists.Count);
            pinLists.Add(list.Pins);
        }

        w.Write7BitEncodedInt(number);
    }

    private void Put(BinaryWriter w, RowOrigin row)
    {
        Put(w, row.Table);
        w.Write7BitEncodedInt(row.Line);
    }

    private void Put(BinaryWriter w, string text) => w.Write7BitEncodedInt(Number(texts, text));

    // NaN stands for unknown: no fact is NaN.
    private static void Put(BinaryWriter w, double? value) => w.Write(value ?? double.NaN);

    private static void Put<T>(BinaryWriter w, IReadOnlyList<T> items, Action<BinaryWriter, T> put)
    {
        w.Write7BitEncodedInt(items.Count);
        foreach (var item in items) put(w, item);
    }

    private static int Number<T>(Dictionary<T, int> known, T item)
        where T : notnull
    {
        if (!known.TryGetValue(item, out var number)) known.Add(item, number = known.Count);
        return number;
    }
}
