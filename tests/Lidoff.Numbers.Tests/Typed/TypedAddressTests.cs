using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

// Seven address bits and the read/write bit behind them: UM10204 (I2C-bus specification), section 3.1.
public sealed class TypedAddressTests : ReaderTable<int>
{
    protected override Outcome<int> Read(string? text) => TypedAddress.Read(text, "here");

    protected override string Write(int value) => $"0x{value:X2}";

    protected override IEnumerable<(string Typed, string Written)> Good =>
        [("0x68", "0x68"), ("0X5c", "0x5C"), ("5C", "0x5C"), ("68h", "0x68"), ("$1D", "0x1D"), ("7", "0x07"), ("104", "0x68"), ("0x00", "0x00"), ("0x7f", "0x7F")];

    protected override IEnumerable<(string? Typed, string Say)> Bad =>
    [
        ("68", "Is the address \"68\" hexadecimal (0x68) or decimal (0x44)?"), ("0xD0", "\"0xD0\" has more than 7 bits. Is it the 8-bit form of 0x68, with the write bit behind it?"),
        ("0xD1", "\"0xD1\" has more than 7 bits. Is it the 8-bit form of 0x68, with the read bit behind it?"), ("0x3FF", "\"0x3FF\" is not a bus address; write it as 0x68."),
        ("xyz", "\"xyz\" is not a bus address; write it as 0x68."), ("0x", "\"0x\" is not a bus address; write it as 0x68."),
    ];
}
