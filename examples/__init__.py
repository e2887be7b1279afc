"""One invented shop's week: people, places, machines and lots here exist nowhere else."""
