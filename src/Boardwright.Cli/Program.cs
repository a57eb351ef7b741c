using System.Globalization;
using Boardwright.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
return new Terminal(Console.In, Console.Out, Console.Error).Run(args);
