namespace Lidoff.Numbers.Tests;
