namespace Lidoff.Architecture.Tests;
