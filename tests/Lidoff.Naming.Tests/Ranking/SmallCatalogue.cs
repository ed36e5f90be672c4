using Lidoff.Catalogue.Parts;

namespace Lidoff.Naming.Tests.Ranking;

/// <summary>A few dozen made-up and real parts, enough for priors and backgrounds to be more than one row.</summary>
internal static class SmallCatalogue
{
    internal static IReadOnlyList<Part> Parts { get; } = [.. Radios(), .. Sensors(), .. Fillers()];

    internal static Part Sensor(string name, int pins, double side, int address, int register, long value) => new()
    {
        Name = name,
        Class = "accelerometer",
        Interface = "I2C",
        Packages = [new PackageFact("LGA", "LGA", side, side, 1, 0.5, pins)],
        BusAddresses = [address, address + 1],
        Identity = [new IdentityRegister(register, value, Confidence.Published)],
        SupplyLeast = 1.7,
        SupplyMost = 3.6,
        Introduced = 2014,
    };

    private static IEnumerable<Part> Radios() => new[] { "nRF52832", "nRF52810", "nRF52811", "nRF51822" }.Select(name => new Part
    {
        Name = name,
        OrderCodes = [name + "-CIAA", name + "-QFAA"],
        Maker = "Nordic Semiconductor",
        Class = "radio SoC",
        Interface = "SWD",
        Packages =
        [
            new PackageFact("QFN-48", "QFN", 6, 6, 0.85, 0.4, 48) { OrderCodes = [name + "-QFAA"] },
            new PackageFact("WLCSP-50", "WLCSP", 3.2, 3.0, 0.5, 0.4, 50) { OrderCodes = [name + "-CIAA"] },
        ],
        SupplyLeast = 1.7,
        SupplyMost = 3.6,
        Introduced = name.StartsWith("nRF51", StringComparison.Ordinal) ? 2012 : 2015,
    });

    private static IEnumerable<Part> Sensors() =>
    [
        Sensor("SEN2101", 12, 2, 0x18, 0x0F, 0x33), Sensor("SEN2102", 12, 2, 0x18, 0x0F, 0x33), Sensor("SEN3300", 14, 2.5, 0x1C, 0x0F, 0x44), Sensor("KAX500", 16, 3, 0x0E, 0x0F, 0x35),
    ];

    private static IEnumerable<Part> Fillers() => Enumerable.Range(0, 60).Select(i => new Part
    {
        Name = "FIL" + (7000 + (37 * i)),
        Class = i % 3 == 0 ? "LDO" : i % 3 == 1 ? "SPI NOR flash" : "audio codec",
        Packages = [new PackageFact("", i % 2 == 0 ? "QFN" : "SOIC", 3 + (i % 4), 3 + (i % 3), 0.9, 0.5, 8 + (4 * (i % 8)))],
        SupplyLeast = 1.8,
        SupplyMost = i % 2 == 0 ? 3.6 : 5.5,
    });
}
