Console.WriteLine("seedfall");
