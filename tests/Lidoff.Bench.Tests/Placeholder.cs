namespace Lidoff.Bench.Tests;
