using ClassKit.Cli;

return CommandLine.Run(args, Console.Out, Console.Error);
