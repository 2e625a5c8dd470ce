/* Solves K u = f by CHOLMOD, so that our solver has something outside the project to be measured against.
 * solve FILE METHOD: FILE holds, in the machine's own numbers, int64 n and nnz; int32 column starts (n + 1) and rows (nnz)
 * of the lower triangle; double entries (nnz) and right-hand side (n). METHOD: amd or metis.
 * Each line on standard input is one round, answered by one line of milliseconds: analyse, factor (new), factor again on the
 * same pattern, solve, solve again; then the scaled residual, the entries of the factor, bytes at their peak. The line "write NAME"
 * writes the last solution as doubles. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <suitesparse/cholmod.h>

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return 1e3 * t.tv_sec + 1e-6 * t.tv_nsec;
}

static void need(int holds, const char *what) {
  if (holds) return;
  fprintf(stderr, "%s\n", what);
  exit(1);
}

static double largest(cholmod_dense *x) {
  double most = 0;
  for (size_t i = 0; i < x->nrow; i++) most = fmax(most, fabs(((double *)x->x)[i]));
  return most;
}

int main(int argc, char **argv) {
  need(argc == 3, "usage: solve FILE amd|metis");
  cholmod_common c;
  cholmod_start(&c);
  c.nmethods = 1;
  c.method[0].ordering = strcmp(argv[2], "metis") == 0 ? CHOLMOD_METIS : CHOLMOD_AMD;
  c.postorder = 1;
  FILE *file = fopen(argv[1], "rb");
  need(file != NULL, "the matrix cannot be opened");
  long long size[2];
  need(fread(size, 8, 2, file) == 2, "no size");
  long long n = size[0], nnz = size[1];
  cholmod_sparse *K = cholmod_allocate_sparse(n, n, nnz, 1, 1, -1, CHOLMOD_REAL, &c);
  cholmod_dense *f = cholmod_zeros(n, 1, CHOLMOD_REAL, &c);
  need(fread(K->p, 4, n + 1, file) == (size_t)(n + 1) && fread(K->i, 4, nnz, file) == (size_t)nnz &&
           fread(K->x, 8, nnz, file) == (size_t)nnz && fread(f->x, 8, n, file) == (size_t)n,
       "the matrix is cut off");
  fclose(file);
  double norm = cholmod_norm_sparse(K, 0, &c);
  char line[4096];
  cholmod_dense *u = NULL;
  while (fgets(line, sizeof line, stdin)) {
    line[strcspn(line, "\n")] = 0;
    if (strncmp(line, "write ", 6) == 0) {
      FILE *out = fopen(line + 6, "wb");
      need(out && u && fwrite(u->x, 8, n, out) == (size_t)n, "the solution cannot be written");
      fclose(out);
      puts("written");
      fflush(stdout);
      continue;
    }
    double t0 = now();
    cholmod_factor *L = cholmod_analyze(K, &c);
    double t1 = now();
    need(L && cholmod_factorize(K, L, &c) && c.status == CHOLMOD_OK, "CHOLMOD does not factorise");
    double t2 = now();
    cholmod_factorize(K, L, &c);
    double t3 = now();
    if (u) cholmod_free_dense(&u, &c);
    u = cholmod_solve(CHOLMOD_A, L, f, &c);
    double t4 = now();
    cholmod_dense *again = cholmod_solve(CHOLMOD_A, L, f, &c);
    double t5 = now();
    cholmod_free_dense(&again, &c);
    cholmod_dense *r = cholmod_copy_dense(f, &c);
    double minus[2] = {-1, 0}, plus[2] = {1, 0};
    cholmod_sdmult(K, 0, minus, plus, u, r, &c);
    printf("%.4f %.4f %.4f %.4f %.4f %.4e %.0f %.0f\n", t1 - t0, t2 - t1, t3 - t2, t4 - t3, t5 - t4,
           largest(r) / (norm * largest(u) + largest(f)), c.lnz, (double)c.memory_usage);
    fflush(stdout);
    cholmod_free_dense(&r, &c);
    cholmod_free_factor(&L, &c);
  }
  return 0;
}
