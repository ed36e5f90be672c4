namespace Lidoff.Reckoning.Tests;
