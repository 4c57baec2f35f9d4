package dev.flangewright.materials;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.people.Refused;
import jakarta.persistence.Embeddable;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a certificate says of a metal; null where it says nothing.
 *
 * @param uniformStrain natural strain at the greatest load, or the hardening exponent n
 * @param anisotropy R, width strain over thickness strain
 * @param minBendRatio smallest inside bend radius over thickness, R/t
 */
@Embeddable
public record CertificateValues(
    @Nullable Double densityKgM3,
    @Nullable Double youngMpa,
    @Nullable Double proofMpa,
    @Nullable Double utsMpa,
    @Nullable Double elongationPercent,
    @Nullable Double uniformStrain,
    @Nullable Double anisotropy,
    @Nullable Double minBendRatio) {

  /**
   * @throws dev.flangewright.forming.FormingException if a value is out of its range
   */
  public CertificateValues {
    FormingInput.DENSITY.checkIfKnown(densityKgM3);
    FormingInput.YOUNG.checkIfKnown(youngMpa);
    FormingInput.PROOF.checkIfKnown(proofMpa);
    FormingInput.UTS.checkIfKnown(utsMpa);
    FormingInput.ELONGATION.checkIfKnown(elongationPercent);
    FormingInput.UNIFORM_STRAIN.checkIfKnown(uniformStrain);
    FormingInput.ANISOTROPY.checkIfKnown(anisotropy);
    FormingInput.MIN_BEND_RATIO.checkIfKnown(minBendRatio);
  }

  /**
   * @throws Refused if there is no value at all, or they contradict each other
   */
  void refuseUnlessSound() {
    boolean empty =
        Stream.of(
                densityKgM3,
                youngMpa,
                proofMpa,
                utsMpa,
                elongationPercent,
                uniformStrain,
                anisotropy,
                minBendRatio)
            .allMatch(Objects::isNull);
    if (empty) {
      throw Refused.unacceptable("Enter at least one value of the certificate.");
    }
    if (proofMpa != null && utsMpa != null && proofMpa > utsMpa) {
      throw Refused.unacceptable("The proof stress must not be above the tensile strength.");
    }
  }
}
